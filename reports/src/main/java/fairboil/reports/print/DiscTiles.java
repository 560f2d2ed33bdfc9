package fairboil.reports.print;

import java.util.ArrayList;
import java.util.List;

/**
 * How a disc lies on pages: on one where it fits, else in equal rectangles to be glued together.
 * Millimetres.
 *
 * @param across how many pieces lie side by side
 * @param down how many lie one below the other
 * @param width width of a piece
 * @param height height of a piece
 */
record DiscTiles(int across, int down, double width, double height) {

  /** Width of the tab that is glued under the next piece. */
  static final double TAB = 12;

  /** One piece by its row and column, from 0. */
  record Tile(int row, int column) {}

  static DiscTiles of(double radius, double width, double height) {
    double size = 2 * radius + 1;
    int across = pieces(size, width);
    int down = pieces(size, height);
    return new DiscTiles(across, down, size / across, size / down);
  }

  private static int pieces(double size, double room) {
    return size <= room ? 1 : (int) Math.ceil(size / (room - TAB));
  }

  boolean isWhole() {
    return across * down == 1;
  }

  /** The pieces, row by row. */
  List<Tile> tiles() {
    List<Tile> tiles = new ArrayList<>();
    for (int row = 0; row < down; row++) {
      for (int column = 0; column < across; column++) {
        tiles.add(new Tile(row, column));
      }
    }
    return tiles;
  }

  /** Where the centre of the disc lies, from the left edge of a piece. */
  double centreX(Tile tile) {
    return (across / 2.0 - tile.column()) * width;
  }

  /** Where the centre of the disc lies, from the upper edge of a piece. */
  double centreY(Tile tile) {
    return (down / 2.0 - tile.row()) * height;
  }
}
