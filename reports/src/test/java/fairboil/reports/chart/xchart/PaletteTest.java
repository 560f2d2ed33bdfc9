package fairboil.reports.chart.xchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PaletteTest {

  private static final int PAPER = 0xFFFFFF;
  private static final int SIDE = 200;

  @Test
  void flatColoursStayExactly() {
    BufferedImage image = paper();
    int[] colours = {0x0072B2, 0xD55E00, 0x009E73, 0x000000, 0x123456, 0x565656};
    for (int i = 0; i < colours.length; i++) {
      fill(image, i * 20, colours[i]);
    }

    assertThat(sameAs(image, Palette.reduced(image))).isTrue();
  }

  @Test
  void softenedEdgesAreMovedByLessThanTheEyeSees() {
    BufferedImage image = paper();
    for (int x = 0; x < SIDE; x++) {
      for (int y = 0; y < 100; y++) {
        image.setRGB(x, y, blend(y < 50 ? 0xD55E00 : 0x0072B2, x / (SIDE - 1.0)));
      }
    }

    // Groups are eight steps of 256 wide.
    assertThat(largestShift(image, Palette.reduced(image))).isLessThanOrEqualTo(7);
  }

  @Test
  void moreGroupsThanTheTableHoldsGoToTheNearest() {
    BufferedImage image = paper();
    SplittableRandom random = new SplittableRandom(7);
    for (int x = 0; x < SIDE; x++) {
      for (int y = 0; y < 10; y++) {
        image.setRGB(x, y, random.nextInt(PAPER));
      }
    }

    BufferedImage reduced = Palette.reduced(image);

    assertThat(((IndexColorModel) reduced.getColorModel()).getMapSize()).isEqualTo(256);
    assertThat(reduced.getRGB(0, SIDE - 1)).isEqualTo(Color.WHITE.getRGB());
    assertThat(largestShift(image, reduced)).isLessThan(100);
  }

  @Test
  void anImageOfOneColourIsItself() {
    assertThat(sameAs(paper(), Palette.reduced(paper()))).isTrue();
  }

  private static BufferedImage paper() {
    BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
    fill(image, 0, PAPER);
    return image;
  }

  private static void fill(BufferedImage image, int fromRow, int colour) {
    for (int y = fromRow; y < SIDE; y++) {
      for (int x = 0; x < SIDE; x++) {
        image.setRGB(x, y, colour);
      }
    }
  }

  private static int blend(int colour, double share) {
    int blended = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int full = colour >> shift & 0xFF;
      blended |= (int) Math.round(255 + (full - 255) * share) << shift;
    }
    return blended;
  }

  private static boolean sameAs(BufferedImage image, BufferedImage other) {
    return largestShift(image, other) == 0;
  }

  private static int largestShift(BufferedImage image, BufferedImage other) {
    int largest = 0;
    for (int y = 0; y < SIDE; y++) {
      for (int x = 0; x < SIDE; x++) {
        for (int shift = 16; shift >= 0; shift -= 8) {
          int one = image.getRGB(x, y) >> shift & 0xFF;
          int two = other.getRGB(x, y) >> shift & 0xFF;
          largest = Math.max(largest, Math.abs(one - two));
        }
      }
    }
    return largest;
  }
}
