package org.frisket.print.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Files with pictures, written by Java, with the parts that Java does not write put in by hand. */
public final class MadePictures {

	private MadePictures() {
	}

	/** Red, with a blue corner at the top left. */
	static BufferedImage cornered(int width, int height, int type) {
		BufferedImage image = new BufferedImage(width, height, type);
		Graphics2D graphics = image.createGraphics();
		graphics.setColor(new Color(200, 40, 30));
		graphics.fillRect(0, 0, width, height);
		graphics.setColor(new Color(20, 60, 180));
		graphics.fillRect(0, 0, width / 2, height / 2);
		graphics.dispose();
		return image;
	}

	public static byte[] written(BufferedImage image, String format) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		if (!ImageIO.write(image, format, out)) {
			throw new IOException("no writer for " + format);
		}
		return out.toByteArray();
	}

	/** Four values a pixel, as they are. */
	static byte[] jpeg(int width, int height, int... values) throws IOException {
		WritableRaster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, width, height,
				values.length, null);
		for (int y = 0; y < height; y++) {
			for (int x = 0; x < width; x++) {
				raster.setPixel(x, y, values);
			}
		}
		ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
			writer.setOutput(stream);
			writer.write(null, new IIOImage(raster, null, null), null);
		} finally {
			writer.dispose();
		}
		return out.toByteArray();
	}

	/** Put in behind the first two bytes. */
	static byte[] withSegment(byte[] jpeg, int marker, byte[] content) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		DataOutputStream data = new DataOutputStream(out);
		data.write(jpeg, 0, 2);
		data.writeShort(0xff00 | marker);
		data.writeShort(content.length + 2);
		data.write(content);
		data.write(jpeg, 2, jpeg.length - 2);
		return out.toByteArray();
	}

	/** The segment that says what four channels are. */
	static byte[] adobe(int transform) {
		return new byte[] { 'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, (byte) transform };
	}

	/** An EXIF part with an orientation and a resolution in dots to the inch. */
	static byte[] exif(int orientation, int dpi) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		DataOutputStream data = new DataOutputStream(out);
		data.write("Exif\0\0MM\0*".getBytes(StandardCharsets.ISO_8859_1));
		data.writeInt(8);
		data.writeShort(3);
		entry(data, 274, 3, orientation << 16);
		entry(data, 282, 5, 50);
		entry(data, 296, 3, 2 << 16);
		data.writeInt(0);
		data.writeInt(dpi);
		data.writeInt(1);
		return out.toByteArray();
	}

	private static void entry(DataOutputStream data, int tag, int type, int value) throws IOException {
		data.writeShort(tag);
		data.writeShort(type);
		data.writeInt(1);
		data.writeInt(value);
	}

	/** Put in behind the first chunk. */
	public static byte[] withChunk(byte[] png, String name, byte[] content) throws IOException {
		int at = 8 + 25;
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		DataOutputStream data = new DataOutputStream(out);
		data.write(png, 0, at);
		byte[] named = new byte[content.length + 4];
		System.arraycopy(name.getBytes(StandardCharsets.ISO_8859_1), 0, named, 0, 4);
		System.arraycopy(content, 0, named, 4, content.length);
		CRC32 check = new CRC32();
		check.update(named);
		data.writeInt(content.length);
		data.write(named);
		data.writeInt((int) check.getValue());
		data.write(png, at, png.length - at);
		return out.toByteArray();
	}
}
