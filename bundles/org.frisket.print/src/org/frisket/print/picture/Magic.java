package org.frisket.print.picture;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * What kind of file one is, by its beginning, whatever it is called.
 *
 * @param format empty for kinds that are not read
 * @param name   of the kind, for people; may be empty
 */
record Magic(Optional<PictureFormat> format, String name) {

	/** How much of a file it takes: comments may come before an SVG, and anything before a PDF (ISO 32000-1, annex H.3). */
	static final int LENGTH = 1024;

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
		} else if (text.startsWith("RIFF") && text.startsWith("WEBP", 8)) {
			return known(PictureFormat.WEBP);
		} else if (isMarkup(text)) {
			return known(PictureFormat.SVG);
		} else if (text.contains("%PDF-")) {
			return known(PictureFormat.PDF);
		}
		return new Magic(Optional.empty(), other(text));
	}

	private static Magic known(PictureFormat format) {
		return new Magic(Optional.of(format), format.name());
	}

	/** What its first element is turns out when it is read. In UTF-16 there are zeros between the characters. */
	private static boolean isMarkup(String text) {
		String plain = text.replace("\0", "").replaceFirst("^(?:\u00ef\u00bb\u00bf|\u00ff\u00fe|\u00fe\u00ff)", "").stripLeading();
		return plain.startsWith("<?xml") || plain.startsWith("<svg") || plain.startsWith("<!--") || plain.startsWith("<!DOCTYPE svg");
	}

	private static String other(String text) {
		if (text.startsWith("ftyp", 4)) {
			return text.startsWith("avif", 8) ? "AVIF" : "HEIF";
		}
		return Messages.Magic_other;
	}
}
