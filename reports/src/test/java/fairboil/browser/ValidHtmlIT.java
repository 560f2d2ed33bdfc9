package fairboil.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.FutureTask;
import java.util.stream.StreamSupport;
import nu.validator.client.EmbeddedValidator;
import nu.validator.client.EmbeddedValidator.OutputFormat;
import org.junit.jupiter.api.Test;

/** Pages by the Nu Html Checker, the validator of the HTML standard. */
class ValidHtmlIT {

  /** The checker knows no fingerprints in a policy, and takes {@code data:} for no source. */
  private static final List<String> NOT_TRUE = List.of("Content Security Policy");

  @Test
  void demo() throws Exception {
    assertThat(faults(Reports.DEMO)).isEmpty();
  }

  @Test
  void hostileStudy() throws Exception {
    assertThat(faults(Reports.HOSTILE)).isEmpty();
  }

  private static List<String> faults(Path page) throws Exception {
    JsonNode messages = new ObjectMapper().readTree(checked(page)).get("messages");
    return StreamSupport.stream(messages.spliterator(), false)
        .map(message -> message.get("lastLine") + ": " + message.get("message").asText())
        .filter(message -> NOT_TRUE.stream().noneMatch(message::contains))
        .toList();
  }

  /** In a thread of its own: reading the schema goes deeper than an ordinary stack. */
  private static String checked(Path page) throws Exception {
    EmbeddedValidator validator = new EmbeddedValidator();
    validator.setOutputFormat(OutputFormat.JSON);
    FutureTask<String> task = new FutureTask<>(() -> validator.validate(page));
    new Thread(null, task, "checker", 64L << 20).start();
    return task.get();
  }
}
