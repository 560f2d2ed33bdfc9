package fairboil.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks into HTML that escapes every angle bracket of its text, as ours must. */
final class Html {

  private static final Pattern TAG =
      Pattern.compile("<(/?[a-zA-Z][a-zA-Z0-9]*)((?:\\s+[^\\s=>]+(?:=\"[^\"]*\")?)*)\\s*>");
  private static final Pattern ATTRIBUTE = Pattern.compile("\\s([^\\s=>]+)(?:=\"([^\"]*)\")?");

  private final String page;

  Html(String page) {
    this.page = page;
  }

  /** An attribute of a tag. */
  record Attribute(String tag, String name, String value) {}

  /** The names of all tags in their order, closing ones with a slash; none from style or script. */
  List<String> tags() {
    List<String> tags = new ArrayList<>();
    Matcher matcher = TAG.matcher(withoutCode());
    while (matcher.find()) {
      tags.add(matcher.group(1));
    }
    return tags;
  }

  /** All attributes in their order. */
  List<Attribute> attributes() {
    List<Attribute> attributes = new ArrayList<>();
    Matcher matcher = TAG.matcher(withoutCode());
    while (matcher.find()) {
      Matcher parts = ATTRIBUTE.matcher(matcher.group(2));
      while (parts.find()) {
        attributes.add(new Attribute(matcher.group(1), parts.group(1), parts.group(2)));
      }
    }
    return attributes;
  }

  /** The values of an attribute wherever it stands. */
  List<String> values(String name) {
    return attributes().stream()
        .filter(attribute -> attribute.name().equals(name))
        .map(Attribute::value)
        .toList();
  }

  /** What stands between the first opening tag of that name and its end. */
  String inside(String tag) {
    Matcher matcher =
        Pattern.compile("<" + tag + "(?: [^>]*)?>(.*?)</" + tag + ">", Pattern.DOTALL)
            .matcher(page);
    if (!matcher.find()) {
      throw new IllegalArgumentException("no " + tag);
    }
    return matcher.group(1);
  }

  /** The text that people read, with entities resolved. */
  String text() {
    return withoutCode()
        .replaceAll("(?s)<!DOCTYPE[^>]*>", "")
        .replaceAll(TAG.pattern(), "")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&#34;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&")
        .replace('\u00a0', ' ');
  }

  private String withoutCode() {
    return page.replaceAll("(?s)<(style|script)>.*?</\\1>", "<$1></$1>");
  }
}
