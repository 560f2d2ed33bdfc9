package fairboil.reports.table;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Objects;

/**
 * The description of all result tables for other programs: what a row is, and each column with its
 * type, unit and meaning.
 *
 * <p>Written as a Data Package, version 2 (datapackage.org/standard). Keys are named where the rows
 * bear them out.
 */
public final class DataPackage {

  /** The file's name, beside the tables. */
  public static final String FILE = "datapackage.json";

  private static final String PROFILES = "https://datapackage.org/profiles/2.0/";

  private final String title;
  private final String program;
  private final List<Resource> resources;

  private DataPackage(String title, String program, List<Resource> resources) {
    this.title = title;
    this.program = program;
    this.resources = List.copyOf(resources);
  }

  /**
   * A table as it was written.
   *
   * @param table the table
   * @param bytes how long its file is
   * @param sha256 the SHA-256 of its file, in hexadecimal
   */
  public record Resource(ResultTable table, long bytes, String sha256) {

    /** Checks that all parts are there. */
    public Resource {
      Objects.requireNonNull(table, "table");
      Objects.requireNonNull(sha256, "sha256");
    }

    private String name() {
      return nameOf(table.schema().file());
    }
  }

  /**
   * The description of some tables.
   *
   * @param title what the report is called
   * @param program the program with its version
   */
  public static DataPackage of(String title, String program, List<Resource> resources) {
    return new DataPackage(title, program, resources);
  }

  /**
   * Writes the description and flushes the writer, which stays open.
   *
   * @throws IOException if the writer refuses
   */
  public void write(Writer writer) throws IOException {
    @SuppressWarnings("resource") // closing it would close the caller's writer
    JsonGenerator json = new JsonFactory().createGenerator(writer);
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    json.setPrettyPrinter(
        new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines));
    json.writeStartObject();
    json.writeStringField("$schema", PROFILES + "datapackage.json");
    json.writeStringField("name", "fairboil-tables");
    json.writeStringField("title", title);
    json.writeStringField("description", "The result tables of a report of " + program + ".");
    json.writeArrayFieldStart("resources");
    for (Resource resource : resources) {
      write(resource, json);
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
    json.flush();
  }

  private void write(Resource resource, JsonGenerator json) throws IOException {
    TableSchema<?> schema = resource.table().schema();
    json.writeStartObject();
    json.writeStringField("$schema", PROFILES + "dataresource.json");
    json.writeStringField("name", resource.name());
    json.writeStringField("type", "table");
    json.writeStringField("path", schema.file());
    json.writeStringField("description", "One row is " + schema.oneRowIs() + ".");
    json.writeStringField("format", "csv");
    json.writeStringField("mediatype", "text/csv");
    json.writeStringField("encoding", "utf-8");
    json.writeNumberField("bytes", resource.bytes());
    json.writeStringField("hash", "sha256:" + resource.sha256());
    writeDialect(json);
    writeSchema(resource, json);
    json.writeEndObject();
  }

  private static void writeDialect(JsonGenerator json) throws IOException {
    json.writeObjectFieldStart("dialect");
    json.writeStringField("$schema", PROFILES + "tabledialect.json");
    json.writeStringField("delimiter", ",");
    json.writeStringField("lineTerminator", "\n");
    json.writeStringField("quoteChar", "\"");
    json.writeBooleanField("doubleQuote", true);
    json.writeBooleanField("header", true);
    json.writeEndObject();
  }

  private void writeSchema(Resource resource, JsonGenerator json) throws IOException {
    json.writeObjectFieldStart("schema");
    json.writeStringField("$schema", PROFILES + "tableschema.json");
    json.writeArrayFieldStart("fields");
    for (TableColumn<?> column : resource.table().schema().columns()) {
      write(column, json);
    }
    json.writeEndArray();
    writeNames("missingValues", List.of(""), json);
    writeKeys(resource, json);
    json.writeEndObject();
  }

  private static void write(TableColumn<?> column, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", column.name());
    json.writeStringField("type", type(column.type()));
    json.writeStringField("description", column.meaning());
    if (!column.unit().isEmpty()) {
      json.writeStringField("unit", column.unit());
    }
    json.writeEndObject();
  }

  private static String type(TableColumn.Type type) {
    return switch (type) {
      case TEXT -> "string";
      case NUMBER -> "number";
      case COUNT -> "integer";
    };
  }

  private void writeKeys(Resource resource, JsonGenerator json) throws IOException {
    List<String> key = Keys.primary(resource.table()).orElse(List.of());
    if (!key.isEmpty()) {
      writeNames("primaryKey", key, json);
    }
    List<Keys.Link> links =
        Keys.from(resource.table(), resources.stream().map(Resource::table).toList());
    if (!links.isEmpty()) {
      json.writeArrayFieldStart("foreignKeys");
      for (Keys.Link link : links) {
        json.writeStartObject();
        writeNames("fields", link.columns(), json);
        json.writeObjectFieldStart("reference");
        json.writeStringField("resource", nameOf(link.to()));
        writeNames("fields", link.columns(), json);
        json.writeEndObject();
        json.writeEndObject();
      }
      json.writeEndArray();
    }
  }

  private static void writeNames(String field, List<String> names, JsonGenerator json)
      throws IOException {
    json.writeArrayFieldStart(field);
    for (String name : names) {
      json.writeString(name);
    }
    json.writeEndArray();
  }

  private static String nameOf(String file) {
    return file.substring(0, file.lastIndexOf('.'));
  }
}
