package fairboil.reports.words;

import java.util.List;

/**
 * The cautions that go with fire, hot metal, scalding water and carbon monoxide, for the page, a
 * new study's guide and printed forms. Common practice, no source.
 */
public final class Cautions {

  /**
   * One point of caution.
   *
   * @param topic what it is about, in a word or two
   * @param text the point, whole sentences
   */
  public record Caution(String topic, String text) {}

  /** What stands above all points. */
  public static final String RULE =
      "Follow your local fire and safety rules; where they and this page differ, they win. Ask a"
          + " qualified person where a stove is to be used by others.";

  /** Every point; unmodifiable. */
  public static final List<Caution> POINTS =
      List.of(
          new Caution(
              "Outdoors only",
              "Outdoors only, on bare ground, away from buildings. Never in a garage, tent, porch"
                  + " or doorway, not even with the door open: wood gas is largely carbon monoxide,"
                  + " and the glowing char after the flame goes out gives off a lot of it."),
          new Caution(
              "Not measured",
              "Nothing here measures carbon monoxide or smoke. No result here says that a stove is"
                  + " safe, or fit for use indoors."),
          new Caution(
              "Metal and cans",
              "Never galvanised metal, aerosol cans or closed containers. First burns of painted,"
                  + " printed or lined cans: outdoors, no pot, stand upwind; do not count them."),
          new Caution(
              "Lighting",
              "Light from the top with solid tinder. Never add liquid fuel to a lit or hot stove."
                  + " An alcohol flame cannot be seen in daylight."),
          new Caution(
              "Fuel and char",
              "Weigh fuel and char only when cold: smother the char in a lidded metal tin and leave"
                  + " it outdoors overnight. Never weigh glowing char; never dry fuel unattended in"
                  + " an oven or microwave."),
          new Caution(
              "Pot and probe",
              "Lid loose, never clamped round a probe. Move a boiling pot with a gripper; try the"
                  + " pot stand with cold water first. Tie the probe leads down."),
          new Caution("Fire", "Water and sand at hand; obey fire bans."),
          new Caution(
              "Cutting",
              "Cut metal is sharp: gloves when handling, off when drilling; drill and punch over a"
                  + " wooden block, can clamped, eye protection; deburr."),
          new Caution(
              "Holes drilled wrong",
              "Holes drilled wrong on purpose can make a stove smoke and give off more carbon"
                  + " monoxide: test those outdoors, upwind, and scrap them after."));

  private Cautions() {}
}
