package org.frisket.export.svg;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Set;

import javax.imageio.ImageIO;

import org.frisket.model.ImageBytes;
import org.frisket.prepare.pictures.PictureFile;

/** A picture as an address that holds all of it. */
final class PictureLink {

	/** What every reader of SVG 1.1 has to know: section 5.7 of its recommendation. */
	private static final Set<String> KNOWN_TO_ALL = Set.of("image/png", "image/jpeg");

	private PictureLink() {
	}

	/** Other kinds of file, and those that lie on their side, are written anew as PNG. */
	static String of(ImageBytes image) {
		try {
			PictureFile file = PictureFile.of(image);
			if (KNOWN_TO_ALL.contains(file.mediaType()) && file.isUpright()) {
				return "data:" + file.mediaType() + ";base64," + image;
			}
			ByteArrayOutputStream png = new ByteArrayOutputStream();
			ImageIO.write(file.decode(Integer.MAX_VALUE).image(), "png", png);
			return "data:image/png;base64," + Base64.getEncoder().encodeToString(png.toByteArray());
		} catch (IOException e) {
			// it was read when the job was prepared
			throw new UncheckedIOException(e);
		}
	}
}
