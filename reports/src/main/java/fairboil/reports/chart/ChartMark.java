package fairboil.reports.chart;

import java.util.List;
import java.util.Objects;

/** One thing drawn on a panel. Places are in the units of the panel's axes, sizes in CSS pixels. */
public sealed interface ChartMark {

  /**
   * The area between two lines.
   *
   * @param outline once round it
   * @param hue its fill
   */
  record Band(Points outline, Hue hue) implements ChartMark {}

  /**
   * A line.
   *
   * @param points the places it joins
   * @param hue its colour
   * @param dash how it is broken
   * @param width its width
   */
  record Line(Points points, Hue hue, Dash dash, double width) implements ChartMark {}

  /**
   * Points with a marker each.
   *
   * @param points where
   * @param hue their colour
   * @param glyph their shape
   * @param fill whether they are filled
   * @param size their width
   */
  record Dots(Points points, Hue hue, Glyph glyph, Fill fill, double size) implements ChartMark {}

  /**
   * Words beside a place, put where they hide nothing.
   *
   * @param spots the places that they may stand beside, best first; at least one
   * @param text the words
   * @param hue their colour
   * @param weight how heavy
   * @param need what is done where there is no room
   */
  record Label(List<ChartPoint> spots, String text, Hue hue, Weight weight, Need need)
      implements ChartMark {

    /** Copies the places. */
    public Label {
      spots = List.copyOf(spots);
      Objects.requireNonNull(text, "text");
      if (spots.isEmpty()) {
        throw new IllegalArgumentException("a label needs a place");
      }
    }
  }

  /**
   * Words to the left of a panel, and others to the right of it, at one height.
   *
   * @param y the height
   * @param left the words to the left
   * @param right the words to the right
   * @param hue their colour
   * @param weight how heavy the words to the left are
   */
  record Row(double y, String left, String right, Hue hue, Weight weight) implements ChartMark {}

  /**
   * An upright line at a moment, its words above the panel.
   *
   * @param x the moment
   * @param text the words; empty to draw the line alone
   */
  record Moment(double x, String text) implements ChartMark {}

  /**
   * What a place tells to a reader who comes near it on a screen. It is not drawn.
   *
   * @param spot where
   * @param size how wide the place is
   * @param text what it tells, in one line
   */
  record Tip(ChartPoint spot, double size, String text) implements ChartMark {

    /** Checks that it tells something. */
    public Tip {
      Objects.requireNonNull(spot, "spot");
      Objects.requireNonNull(text, "text");
    }
  }

  /** Whether a marker is filled. */
  enum Fill {
    /** Filled, with a thin white edge. */
    FULL,
    /** An outline filled with white. */
    HOLLOW,
    /** Filled, so thinly that others show through. */
    FAINT
  }

  /** How heavy text is. */
  enum Weight {
    /** Ordinary. */
    PLAIN,
    /** Bold. */
    BOLD
  }

  /** What is done with a label for which there is no room. */
  enum Need {
    /** It stands where it hides least. */
    ALWAYS,
    /** It is left out. */
    IF_ROOM
  }
}
