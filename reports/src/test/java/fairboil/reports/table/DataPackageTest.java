package fairboil.reports.table;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.univocity.parsers.csv.CsvParser;
import com.univocity.parsers.csv.CsvParserSettings;
import fairboil.analysis.Results;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.reports.SampleResults;
import fairboil.reports.table.DataPackage.Resource;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The description of the tables, against the rules of the Data Package standard, version 2.0, and
 * against the tables themselves, read back by another library (univocity-parsers).
 */
class DataPackageTest {

  private static final String SHA256 = "0123456789abcdef".repeat(4);
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Table Schema, "Number": a decimal with a dot; a sign and an exponent are allowed. */
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?(E[+-]?\\d+)?");

  private static final Pattern INTEGER = Pattern.compile("[+-]?\\d+");

  private final List<ResultTable> tables =
      ResultTables.of(SampleResults.typical(DisplayUnits.METRIC));
  private final JsonNode descriptor = descriptor(tables);

  @Test
  void followsTheRulesOfTheStandard() {
    assertThat(faults(descriptor)).isEmpty();
    assertThat(faults(descriptor(ResultTables.of(SampleResults.empty())))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"path, ../runs.csv", "type, tabular", "hash, sha256:xyz", "mediatype, csv"})
  void theRulesRefuseWhatIsWrong(String property, String wrong) {
    JsonNode spoilt = descriptor.deepCopy();
    ((ObjectNode) spoilt.get("resources").get(0)).put(property, wrong);
    assertThat(faults(spoilt)).isNotEmpty();
  }

  @Test
  void describesEveryColumnOfEveryTable() {
    assertThat(descriptor.get("resources")).hasSameSizeAs(tables);
    for (int i = 0; i < tables.size(); i++) {
      JsonNode resource = descriptor.get("resources").get(i);
      List<String[]> rows = read(tables.get(i));
      assertThat(resource.get("path").asText()).isEqualTo(tables.get(i).schema().file());
      assertThat(texts(resource.get("schema").get("fields"), "name")).containsExactly(rows.get(0));
      assertThat(texts(resource.get("schema").get("fields"), "description"))
          .noneMatch(String::isBlank);
      assertThat(resource.get("hash").asText()).isEqualTo("sha256:" + SHA256);
      assertThat(resource.get("bytes").asLong()).isEqualTo(i);
    }
  }

  @Test
  void cellsAreOfTheTypeOfTheirColumn() {
    int numbers = 0;
    for (int i = 0; i < tables.size(); i++) {
      List<String> types =
          texts(descriptor.get("resources").get(i).get("schema").get("fields"), "type");
      List<String[]> rows = read(tables.get(i));
      for (String[] row : rows.subList(1, rows.size())) {
        for (int column = 0; column < row.length; column++) {
          if (!row[column].isEmpty() && !types.get(column).equals("string")) {
            Pattern pattern = types.get(column).equals("integer") ? INTEGER : NUMBER;
            assertThat(row[column]).matches(pattern);
            numbers++;
          }
        }
      }
    }
    assertThat(numbers).isGreaterThan(1_000);
  }

  @Test
  void keysTellRowsApart() {
    JsonNode runs = descriptor.get("resources").get(0).get("schema");
    assertThat(runs.get("primaryKey")).hasSize(1);
    assertThat(runs.get("foreignKeys").get(0).get("reference").get("resource").asText())
        .isEqualTo("builds");
    List<String[]> rows = read(tables.get(0));
    List<String> names = rows.subList(1, rows.size()).stream().map(row -> row[0]).toList();
    assertThat(new HashSet<>(names)).hasSameSizeAs(names);
  }

  /** Two studies taken together may have runs of one name: then there is no such key to claim. */
  @Test
  void aKeyThatDoesNotHoldIsNotClaimed() {
    Results results = SampleResults.typical(DisplayUnits.METRIC);
    List<fairboil.analysis.run.RunResult> twice = new ArrayList<>(results.runs());
    twice.addAll(results.runs());
    JsonNode schema =
        descriptor(List.of(RunsTable.SCHEMA.of(twice))).get("resources").get(0).get("schema");
    assertThat(schema.has("primaryKey")).isFalse();
    assertThat(schema.has("foreignKeys")).isFalse();
  }

  private static JsonNode descriptor(List<ResultTable> tables) {
    List<Resource> resources = new ArrayList<>();
    for (ResultTable table : tables) {
      resources.add(new Resource(table, resources.size(), SHA256));
    }
    StringWriter writer = new StringWriter();
    try {
      DataPackage.of("A study", "fairboil 0.0-test", resources).write(writer);
      return JSON.readTree(writer.toString());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static List<String> faults(JsonNode descriptor) {
    try (InputStream in =
        DataPackageTest.class.getResourceAsStream("data-package-2.0.schema.json")) {
      JsonSchema schema = JsonSchemaFactory.getInstance(VersionFlag.V7).getSchema(in);
      return schema.validate(descriptor).stream().map(Object::toString).toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static List<String> texts(JsonNode nodes, String property) {
    List<String> texts = new ArrayList<>();
    nodes.forEach(node -> texts.add(node.get(property).asText()));
    return texts;
  }

  private static List<String[]> read(ResultTable table) {
    StringWriter writer = new StringWriter();
    try {
      table.writeCsv(writer);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    CsvParserSettings settings = new CsvParserSettings();
    settings.setMaxCharsPerColumn(-1);
    settings.setNullValue("");
    settings.setEmptyValue("");
    return new CsvParser(settings).parseAll(new StringReader(writer.toString()));
  }
}
