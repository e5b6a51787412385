package akin.engine.read;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * The patches of a chart of six by four, sampled from a PNG or TIFF frame by the corners of its patches.
 *
 * <p>The corners are carried to a rectangle by the one perspective that fits (a homography); of each patch the middle, half
 * as wide and half as high, is averaged. Values are taken as they are stored, without any colour management.
 *
 * @param patches row by row
 */
public record ChartFrame(List<Patch> patches) {

    private static final int COLUMNS = 6;
    private static final int ROWS = 4;
    private static final double MIDDLE = 0.25;
    private static final int SAMPLES = 48;
    private static final int CORNERS = 4;

    /** More pixels than any frame has; what a hostile header may ask for. */
    private static final long MOST_PIXELS = 40_000_000;

    private static final long LARGEST_FILE = 400_000_000;

    /** Pixels decoded at once, so that a frame fits into the memory of a small Java. */
    private static final long MOST_AT_ONCE = 4_000_000;

    /** Copies the list. */
    public ChartFrame {
        patches = List.copyOf(patches);
    }

    /**
     * A patch.
     *
     * @param mean red, green and blue, 0 to 1 of the values stored
     * @param spread the widest standard deviation of the three inside it
     * @param uncertainty how well the mean is known: the deviation over the root of the samples, at least half a step
     */
    public record Patch(List<Double> mean, double spread, double uncertainty) {

        /** Copies the list. */
        public Patch {
            mean = List.copyOf(mean);
        }
    }

    /** A frame that cannot be sampled; the message is for the person who named it. */
    public static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final boolean corners;

        Unreadable(String message, boolean corners) {
            super(message, null, false, false);
            this.corners = corners;
        }

        /** True when the corners are wrong; false when the file is. */
        public boolean corners() {
            return corners;
        }
    }

    /** The widest standard deviation inside any patch. */
    public double spread() {
        return patches.stream().mapToDouble(Patch::spread).max().orElse(0);
    }

    /**
     * Samples a frame.
     *
     * @param corners x and y in pixels of the outer corners of the patches: of the first patch, the last of the first row,
     *     the last of all, and the first of the last row
     * @throws Unreadable when the file is no such frame, or the corners are not in it
     */
    public static ChartFrame sample(Path file, List<List<Double>> corners) {
        if (!Files.isRegularFile(file)) {
            throw new Unreadable("there is no such file beside the readings", false);
        }
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            if (in == null || in.length() > LARGEST_FILE) {
                throw new Unreadable("larger than the 400 MB a frame may have", false);
            }
            ImageReader reader = reader(in);
            try {
                reader.setInput(in, true, true);
                return sample(reader, corners);
            } finally {
                reader.dispose();
            }
        } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException | NegativeArraySizeException e) {
            throw new Unreadable("this PNG or TIFF file is damaged", false);
        }
    }

    private static ImageReader reader(ImageInputStream in) {
        Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
        while (readers.hasNext()) {
            ImageReader reader = readers.next();
            try {
                String name = reader.getFormatName().toLowerCase(Locale.ROOT);
                if (Set.of("png", "tif", "tiff").contains(name)) {
                    return reader;
                }
            } catch (IOException e) {
                // Then it is not one of these.
            }
        }
        throw new Unreadable("this is no PNG or TIFF file", false);
    }

    private static ChartFrame sample(ImageReader reader, List<List<Double>> corners) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_PIXELS) {
            throw new Unreadable(
                    "it has " + width + " x " + height + " pixels; a frame has " + MOST_PIXELS / 1_000_000
                            + " million at most",
                    false);
        }
        double[] map = homography(points(corners, width, height));
        Rectangle around = around(corners, width, height);
        // Every so many pixels, so that the picture of the chart fits into the memory of a small Java.
        int every = 1;
        while ((long) (around.width / every + 1) * (around.height / every + 1) > MOST_AT_ONCE) {
            every++;
        }
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceRegion(around);
        param.setSourceSubsampling(every, every, 0, 0);
        BufferedImage image = reader.read(0, param);
        Raster raster = image.getRaster();
        if (raster.getNumBands() < 3 || image.getColorModel() instanceof java.awt.image.IndexColorModel) {
            throw new Unreadable("it has no red, green and blue", false);
        }
        double top = Math.pow(2, raster.getSampleModel().getSampleSize(0)) - 1;
        List<Patch> patches = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < COLUMNS; column++) {
                patches.add(patch(raster, around, every, map, row, column, top));
            }
        }
        return new ChartFrame(patches);
    }

    private static Patch patch(
            Raster raster, Rectangle around, int every, double[] map, int row, int column, double top) {
        double[] sum = new double[3];
        double[] squares = new double[3];
        int count = 0;
        for (int j = 0; j < SAMPLES; j++) {
            for (int i = 0; i < SAMPLES; i++) {
                double u = (column + MIDDLE + (1 - 2 * MIDDLE) * (i + 0.5) / SAMPLES) / COLUMNS;
                double v = (row + MIDDLE + (1 - 2 * MIDDLE) * (j + 0.5) / SAMPLES) / ROWS;
                double w = map[6] * u + map[7] * v + 1;
                int x = (int) ((map[0] * u + map[1] * v + map[2]) / w - around.x) / every;
                int y = (int) ((map[3] * u + map[4] * v + map[5]) / w - around.y) / every;
                int atX = raster.getMinX() + Math.max(0, Math.min(raster.getWidth() - 1, x));
                int atY = raster.getMinY() + Math.max(0, Math.min(raster.getHeight() - 1, y));
                for (int c = 0; c < 3; c++) {
                    double value = raster.getSample(atX, atY, c) / top;
                    sum[c] += value;
                    squares[c] += value * value;
                }
                count++;
            }
        }
        double[] mean = new double[3];
        double widest = 0;
        for (int c = 0; c < 3; c++) {
            mean[c] = sum[c] / count;
            widest = Math.max(widest, Math.sqrt(Math.max(0, squares[c] / count - mean[c] * mean[c])));
        }
        return new Patch(
                List.of(mean[0], mean[1], mean[2]), widest, Math.max(0.5 / top, 2 * widest / Math.sqrt(count)));
    }

    private static double[][] points(List<List<Double>> corners, int width, int height) {
        if (corners.size() != CORNERS || corners.stream().anyMatch(corner -> corner.size() != 2)) {
            throw new Unreadable(
                    "four corners belong here, each [x, y]: of the first patch, then clockwise as the chart is read",
                    true);
        }
        double[][] points = new double[CORNERS][];
        for (int i = 0; i < CORNERS; i++) {
            double x = corners.get(i).get(0);
            double y = corners.get(i).get(1);
            if (!(x >= 0 && x <= width && y >= 0 && y <= height)) {
                throw new Unreadable(
                        "the corner [" + x + ", " + y + "] is outside the frame of " + width + " x " + height, true);
            }
            points[i] = new double[] {x, y};
        }
        int turning = 0;
        for (int i = 0; i < CORNERS; i++) {
            double[] a = points[i];
            double[] b = points[(i + 1) % CORNERS];
            double[] c = points[(i + 2) % CORNERS];
            double cross = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
            turning += cross > 1 ? 1 : cross < -1 ? -1 : 0;
        }
        if (Math.abs(turning) != CORNERS) {
            throw new Unreadable("these corners make no four-sided shape in this order; go round the chart", true);
        }
        return points;
    }

    private static Rectangle around(List<List<Double>> corners, int width, int height) {
        double left = corners.stream().mapToDouble(c -> c.get(0)).min().orElseThrow();
        double right = corners.stream().mapToDouble(c -> c.get(0)).max().orElseThrow();
        double upper = corners.stream().mapToDouble(c -> c.get(1)).min().orElseThrow();
        double lower = corners.stream().mapToDouble(c -> c.get(1)).max().orElseThrow();
        int x = (int) Math.floor(left);
        int y = (int) Math.floor(upper);
        return new Rectangle(
                x, y, Math.min(width, (int) Math.ceil(right)) - x, Math.min(height, (int) Math.ceil(lower)) - y);
    }

    /**
     * The perspective that takes the unit square, corners in the order of the points, to four points: eight numbers, the
     * ninth being 1.
     *
     * <p>Source: P. S. Heckbert, Fundamentals of Texture Mapping and Image Warping (1989), section 2.2.3, square to
     * quadrilateral.
     */
    private static double[] homography(double[][] p) {
        double sumX = p[0][0] - p[1][0] + p[2][0] - p[3][0];
        double sumY = p[0][1] - p[1][1] + p[2][1] - p[3][1];
        double x1 = p[1][0] - p[2][0];
        double x2 = p[3][0] - p[2][0];
        double y1 = p[1][1] - p[2][1];
        double y2 = p[3][1] - p[2][1];
        double area = x1 * y2 - x2 * y1;
        double g = (sumX * y2 - x2 * sumY) / area;
        double h = (x1 * sumY - sumX * y1) / area;
        return new double[] {
            p[1][0] - p[0][0] + g * p[1][0],
            p[3][0] - p[0][0] + h * p[3][0],
            p[0][0],
            p[1][1] - p[0][1] + g * p[1][1],
            p[3][1] - p[0][1] + h * p[3][1],
            p[0][1],
            g,
            h
        };
    }
}
