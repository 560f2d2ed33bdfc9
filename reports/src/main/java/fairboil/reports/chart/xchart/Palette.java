package fairboil.reports.chart.xchart;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferInt;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Arrays;

/**
 * A drawing in at most 256 colours: a third of the bytes to pack, and a file of 40 % of the size.
 *
 * <p>A chart has a dozen colours and the shades between them at softened edges. Colours are grouped
 * by the upper five bits of each channel; a group is drawn in its most usual colour, so that paper,
 * ink and lines keep theirs exactly, and the rarest groups beyond 256 in the nearest kept one.
 */
final class Palette {

  private static final int SIZE = 256;
  private static final int GROUPS = 1 << 15;
  private static final int SHORT_RUN = 12;

  private final int[] count = new int[GROUPS];
  private final int[] seen = new int[GROUPS];
  private int groups;
  // The most usual colour of each group by the majority vote of Boyer and Moore.
  private final int[] usual = new int[GROUPS];
  private final int[] votes = new int[GROUPS];

  // Where each run of equal pixels ends, so that they are looked for only once.
  private int[] ends = new int[1 << 13];
  private int runs;

  private Palette(int[] pixels) {
    for (int start = 0; start < pixels.length; ) {
      int end = endOfEqual(pixels, start);
      add(pixels[start] & 0xFFFFFF, end - start);
      if (runs == ends.length) {
        ends = Arrays.copyOf(ends, 2 * runs);
      }
      ends[runs++] = end;
      start = end;
    }
  }

  /** The image of type RGB in at most 256 colours. */
  static BufferedImage reduced(BufferedImage image) {
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    Palette palette = new Palette(pixels);
    int[] kept = palette.mostUsed();
    WritableRaster raster =
        Raster.createInterleavedRaster(
            DataBuffer.TYPE_BYTE, image.getWidth(), image.getHeight(), 1, null);
    byte[] indices = ((DataBufferByte) raster.getDataBuffer()).getData();
    palette.fill(pixels, indices, palette.indexOfGroups(kept));
    return new Reduced(palette.colours(kept), raster);
  }

  /** An image that nobody changes, so that who asks for a copy of its pixels needs none. */
  private static final class Reduced extends BufferedImage {

    Reduced(IndexColorModel colours, WritableRaster indices) {
      super(colours, indices, false, null);
    }

    @Override
    public Raster getData() {
      return getRaster();
    }
  }

  private static int endOfEqual(int[] pixels, int start) {
    int soon = Math.min(pixels.length, start + SHORT_RUN);
    for (int end = start + 1; end < soon; end++) {
      if (pixels[end] != pixels[start]) {
        return end;
      }
    }
    // Long runs, of paper mostly, at the speed of the processor's vectors.
    int last = pixels.length - 1;
    int equal = Arrays.mismatch(pixels, soon - 1, last, pixels, soon, pixels.length);
    return equal < 0 ? pixels.length : soon + equal;
  }

  private static int group(int colour) {
    return (colour >> 9 & 0x7C00) | (colour >> 6 & 0x3E0) | (colour >> 3 & 0x1F);
  }

  private void add(int colour, int times) {
    int group = group(colour);
    if (count[group] == 0) {
      seen[groups++] = group;
    }
    count[group] += times;
    if (usual[group] == colour) {
      votes[group] += times;
    } else if (votes[group] >= times) {
      votes[group] -= times;
    } else {
      usual[group] = colour;
      votes[group] = times - votes[group];
    }
  }

  /** The groups most used, at most 256. */
  private int[] mostUsed() {
    // Sorted by count, then by group: one number holds both.
    long[] used =
        Arrays.stream(seen, 0, groups)
            .mapToLong(group -> -((long) count[group] << 15) + group)
            .sorted()
            .toArray();
    return Arrays.stream(used, 0, Math.min(SIZE, used.length))
        .mapToInt(key -> (int) (key & GROUPS - 1))
        .toArray();
  }

  private IndexColorModel colours(int[] kept) {
    byte[] red = new byte[kept.length];
    byte[] green = new byte[kept.length];
    byte[] blue = new byte[kept.length];
    for (int i = 0; i < kept.length; i++) {
      int colour = usual[kept[i]];
      red[i] = (byte) (colour >> 16);
      green[i] = (byte) (colour >> 8);
      blue[i] = (byte) colour;
    }
    return new IndexColorModel(8, kept.length, red, green, blue);
  }

  private byte[] indexOfGroups(int[] kept) {
    byte[] indices = new byte[GROUPS];
    int[] colours = Arrays.stream(kept).map(group -> usual[group]).toArray();
    for (int i = 0; groups > kept.length && i < groups; i++) {
      indices[seen[i]] = (byte) nearest(usual[seen[i]], colours);
    }
    for (int i = 0; i < kept.length; i++) {
      indices[kept[i]] = (byte) i;
    }
    return indices;
  }

  private static int nearest(int colour, int[] colours) {
    int nearest = 0;
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < colours.length; i++) {
      int distance = distance(colour, colours[i]);
      if (distance < least) {
        least = distance;
        nearest = i;
      }
    }
    return nearest;
  }

  private static int distance(int one, int other) {
    int red = (one >> 16) - (other >> 16);
    int green = (one >> 8 & 0xFF) - (other >> 8 & 0xFF);
    int blue = (one & 0xFF) - (other & 0xFF);
    return red * red + green * green + blue * blue;
  }

  /** Puts the indices into an array of zeros, which is right as it is for most: the paper. */
  private void fill(int[] pixels, byte[] indices, byte[] indexOfGroup) {
    int start = 0;
    for (int run = 0; run < runs; run++) {
      int end = ends[run];
      byte index = indexOfGroup[group(pixels[start] & 0xFFFFFF)];
      if (index != 0) {
        for (int i = start; i < end; i++) {
          indices[i] = index;
        }
      }
      start = end;
    }
  }
}
