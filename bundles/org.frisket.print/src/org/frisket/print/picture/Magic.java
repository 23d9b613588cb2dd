package org.frisket.print.picture;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * What kind of file one is, by its first bytes, whatever it is called.
 *
 * @param format empty for kinds that are not read
 * @param name   of the kind, for people; may be empty
 */
record Magic(Optional<PictureFormat> format, String name) {

	static Magic of(byte[] bytes, int count) {
		String text = new String(bytes, 0, count, StandardCharsets.ISO_8859_1);
		if (text.startsWith("\u0089PNG\r\n\u001a\n")) {
			return known(PictureFormat.PNG);
		} else if (text.startsWith("\u00ff\u00d8\u00ff")) {
			return known(PictureFormat.JPEG);
		} else if (text.startsWith("GIF8")) {
			return known(PictureFormat.GIF);
		} else if (text.startsWith("BM")) {
			return known(PictureFormat.BMP);
		} else if (text.startsWith("II*\0") || text.startsWith("MM\0*")) {
			return known(PictureFormat.TIFF);
		}
		return new Magic(Optional.empty(), other(text));
	}

	private static Magic known(PictureFormat format) {
		return new Magic(Optional.of(format), format.name());
	}

	private static String other(String text) {
		if (text.startsWith("RIFF") && text.startsWith("WEBP", 8)) {
			return "WebP";
		} else if (text.startsWith("ftyp", 4)) {
			return text.startsWith("avif", 8) ? "AVIF" : "HEIF";
		} else if (text.startsWith("%PDF")) {
			return "PDF";
		}
		return text.startsWith("<svg") || text.startsWith("<?xml") ? "SVG" : Messages.Magic_other;
	}
}
