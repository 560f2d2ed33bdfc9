package fairboil.reports.print;

import java.util.ArrayList;
import java.util.List;

/**
 * How a disc lies on pages: on one where it fits, else in equal rectangles to be glued together,
 * moved so that the joins keep as clear of the holes as the paper allows. Millimetres.
 *
 * @param across how the pieces lie side by side
 * @param down how they lie one below the other
 */
record DiscTiles(Row across, Row down) {

  /** Width of the tab that is glued under the next piece. */
  static final double TAB = 12;

  /** Distance of a join from the middle of a hole at which it is as good as any further away. */
  private static final double FAR_ENOUGH = 12;

  private static final double STEP = 0.5;

  /** One piece by its row and column, from 0. */
  record Tile(int row, int column) {}

  /**
   * Pieces in one direction.
   *
   * @param pieces how many there are
   * @param length length of each
   * @param centre where the centre of the disc lies, from the beginning of the first
   */
  record Row(int pieces, double length, double centre) {

    /**
     * Pieces that hold a disc.
     *
     * @param radius of the disc
     * @param room longest piece without a tab
     * @param holes where the holes lie, from the centre of the disc
     */
    static Row of(double radius, double room, List<Double> holes) {
      double size = 2 * radius + 1;
      if (size <= room) {
        return new Row(1, size, size / 2);
      }
      double length = room - TAB;
      int pieces = (int) Math.ceil(size / length);
      double spare = pieces * length - size;
      Row best = new Row(pieces, length, pieces * length / 2);
      for (double shift = STEP; shift <= spare / 2; shift += STEP) {
        for (double sign : new double[] {1, -1}) {
          Row moved = new Row(pieces, length, pieces * length / 2 + sign * shift);
          best = moved.clearance(holes) > best.clearance(holes) ? moved : best;
        }
      }
      return best;
    }

    /** Distance from the joins to the nearest hole, up to what is far enough. */
    double clearance(List<Double> holes) {
      double clearance = FAR_ENOUGH;
      for (double hole : holes) {
        for (int join = 1; join < pieces; join++) {
          clearance = Math.min(clearance, Math.abs(centre + hole - join * length));
        }
      }
      return clearance;
    }
  }

  /**
   * Lays out a disc.
   *
   * @param width width of the paper that can be drawn on
   * @param height its height
   */
  static DiscTiles of(Disc disc, double width, double height) {
    List<Disc.Spot> holes =
        disc.circles().stream()
            .flatMap(circle -> circle.spots().stream())
            .filter(spot -> spot.hole().isPresent())
            .toList();
    return new DiscTiles(
        Row.of(disc.radius(), width, holes.stream().map(Disc.Spot::x).toList()),
        Row.of(disc.radius(), height, holes.stream().map(spot -> -spot.y()).toList()));
  }

  /** Width of a piece. */
  double width() {
    return across.length();
  }

  /** Height of a piece. */
  double height() {
    return down.length();
  }

  boolean isWhole() {
    return across.pieces() * down.pieces() == 1;
  }

  /** Width of the tab on the right of a piece; 0 where no piece follows. */
  double tabRight(Tile tile) {
    return tile.column() + 1 < across.pieces() ? TAB : 0;
  }

  /** Height of the tab below a piece; 0 where no piece follows. */
  double tabBelow(Tile tile) {
    return tile.row() + 1 < down.pieces() ? TAB : 0;
  }

  /** The pieces, row by row. */
  List<Tile> tiles() {
    List<Tile> tiles = new ArrayList<>();
    for (int row = 0; row < down.pieces(); row++) {
      for (int column = 0; column < across.pieces(); column++) {
        tiles.add(new Tile(row, column));
      }
    }
    return tiles;
  }

  /** Where the centre of the disc lies, from the left edge of a piece. */
  double centreX(Tile tile) {
    return across.centre() - tile.column() * across.length();
  }

  /** Where the centre of the disc lies, from the upper edge of a piece. */
  double centreY(Tile tile) {
    return down.centre() - tile.row() * down.length();
  }
}
