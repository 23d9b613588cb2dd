import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

import javax.imageio.ImageIO;

/**
 * Keeps what an X server without a screen shows: {@code java Picture.java FRAMEBUFFER PICTURE.png}. The framebuffer is an X
 * window dump of version 7. Ends with 1, and a word why, if nothing is seen on it.
 */
class Picture {

	/** A window with a job on its bench has hundreds; a bare one, or one that has not painted yet, a few. */
	private static final int FEWEST_COLOURS = 60;
	private static final int WIDTH_AT = 16;
	private static final int HEIGHT_AT = 20;
	private static final int ORDER_AT = 28;
	private static final int BITS_AT = 44;
	private static final int LINE_AT = 48;
	private static final int COLOURS_AT = 76;
	private static final int COLOUR_BYTES = 12;

	public static void main(String[] args) throws IOException {
		ByteBuffer dump = ByteBuffer.wrap(Files.readAllBytes(Path.of(args[0])));
		if (dump.getInt(BITS_AT) != Integer.SIZE) {
			fail("pictures are read with 32 bits a pixel, not " + dump.getInt(BITS_AT));
		}
		BufferedImage picture = read(dump);
		Set<Integer> colours = new HashSet<>();
		for (int y = 0; y < picture.getHeight(); y++) {
			for (int x = 0; x < picture.getWidth(); x++) {
				colours.add(picture.getRGB(x, y));
			}
		}
		ImageIO.write(picture, "png", Path.of(args[1]).toFile());
		if (colours.size() < FEWEST_COLOURS) {
			fail(args[1] + " is blank: it has " + colours.size() + " colours");
		}
	}

	private static BufferedImage read(ByteBuffer dump) {
		int start = dump.getInt(0) + dump.getInt(COLOURS_AT) * COLOUR_BYTES;
		boolean isLittleEndian = dump.getInt(ORDER_AT) == 0;
		BufferedImage picture = new BufferedImage(dump.getInt(WIDTH_AT), dump.getInt(HEIGHT_AT),
				BufferedImage.TYPE_INT_RGB);
		for (int y = 0; y < picture.getHeight(); y++) {
			for (int x = 0; x < picture.getWidth(); x++) {
				int pixel = dump.getInt(start + y * dump.getInt(LINE_AT) + x * Integer.BYTES);
				picture.setRGB(x, y, isLittleEndian ? Integer.reverseBytes(pixel) : pixel);
			}
		}
		return picture;
	}

	private static void fail(String why) {
		System.err.println(why);
		System.exit(1);
	}
}
