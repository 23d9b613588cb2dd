package org.frisket.export.svg;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;

import javax.imageio.ImageIO;

import org.frisket.geometry.Monitor;
import org.frisket.prepare.PreparedPicture;
import org.frisket.prepare.pictures.PictureFile;

/** A picture as an address that holds all of it. */
final class PictureLink {

	/** How fine art without pixels is drawn for readers that would not show it as it is, dots to the inch. */
	private static final double DRAWN = 300;

	private PictureLink() {
	}

	/** What not every reader shows alike is written anew as PNG. */
	static String of(PreparedPicture picture) {
		try {
			PictureFile file = picture.file();
			if (isKnownToAll(picture, file)) {
				return "data:" + file.mediaType() + ";base64," + picture.image();
			}
			ByteArrayOutputStream png = new ByteArrayOutputStream();
			ImageIO.write(file.decodeFor(picture.longest(), DRAWN, Monitor.NONE).image(), "png", png);
			return "data:image/png;base64," + Base64.getEncoder().encodeToString(png.toByteArray());
		} catch (IOException e) {
			// it was read when the job was prepared
			throw new UncheckedIOException(e);
		}
	}

	/** PNG, JPEG and SVG are what every reader of SVG 1.1 has to know: section 5.7 of its recommendation. */
	private static boolean isKnownToAll(PreparedPicture picture, PictureFile file) {
		return switch (file.format()) {
		case PNG, JPEG -> file.isUpright();
		case SVG -> PlainDrawing.isPlain(picture.image(), file.trueWidth() / file.trueHeight());
		default -> false;
		};
	}
}
