package org.frisket.imports.svg;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Transform;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.Remarks;

/** Pictures of pixels whose data stand in the file. Nothing is fetched; pictures are measured, not decoded. */
final class PictureReader {

	private final Remarks remarks;
	private final Addresses addresses;
	private final ShapeOutlines lengths;

	PictureReader(Remarks remarks, Addresses addresses, ShapeOutlines lengths) {
		this.remarks = remarks;
		this.addresses = addresses;
		this.lengths = lengths;
	}

	/** @param toMm of the element's pixels */
	void read(Node node, Lengths pixels, Transform toMm, List<ImportedShape> out) {
		String address = node.attribute("href", "").strip();
		if (!address.regionMatches(true, 0, "data:", 0, 5)) {
			addresses.remote(node, address);
			return;
		}
		int comma = address.indexOf(',');
		String head = comma < 0 ? "" : address.substring(5, comma).toLowerCase(Locale.ROOT);
		String type = head.isEmpty() ? "text/plain" : head.split(";")[0];
		if (comma >= 0 && (type.startsWith("image/svg") || !type.startsWith("image/"))) {
			remarks.once(node.place(), NLS.bind(Messages.PictureReader_vector, type));
			return;
		}
		byte[] bytes = comma < 0 ? null : bytes(address.substring(comma + 1), head.endsWith("base64"));
		int[] size = bytes == null ? null : size(bytes);
		if (size == null) {
			remarks.once(node.place(), Messages.PictureReader_data);
			return;
		}
		out.add(new ImportedShape.Picture(node.attribute("id", ""), bytes, type, place(node, pixels, size).then(toMm)));
	}

	private static byte[] bytes(String data, boolean base64) {
		try {
			return base64 ? Base64.getMimeDecoder().decode(data)
					: URLDecoder.decode(data.replace("+", "%2B"), StandardCharsets.ISO_8859_1)
							.getBytes(StandardCharsets.ISO_8859_1);
		} catch (IllegalArgumentException e) {
			return null;
		}
	}

	/** Width and height in the picture's own pixels; null if it is no picture that is known. */
	private static int[] size(byte[] bytes) {
		try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
			Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
			if (!readers.hasNext()) {
				return null;
			}
			ImageReader reader = readers.next();
			try {
				reader.setInput(in, true, true);
				int[] size = { reader.getWidth(0), reader.getHeight(0) };
				return size[0] > 0 && size[1] > 0 ? size : null;
			} finally {
				reader.dispose();
			}
		} catch (IOException | RuntimeException e) {
			return null;
		}
	}

	/** Takes the unit square to where the picture lies among the pixels of the element. */
	private Transform place(Node node, Lengths pixels, int[] size) {
		double width = lengths.length(node, "width", pixels, Lengths.Of.WIDTH);
		double height = lengths.length(node, "height", pixels, Lengths.Of.HEIGHT);
		if (width <= 0) {
			width = height > 0 ? height * size[0] / size[1] : size[0];
		}
		if (height <= 0) {
			height = width * size[1] / size[0];
		}
		Transform fit = new ViewBox(0, 0, size[0], size[1]).into(width, height,
				node.attribute("preserveAspectRatio", "xMidYMid meet"));
		return Transform.scaling(size[0], size[1]).then(fit).then(Transform.translation(
				lengths.length(node, "x", pixels, Lengths.Of.WIDTH), lengths.length(node, "y", pixels, Lengths.Of.HEIGHT)));
	}
}
