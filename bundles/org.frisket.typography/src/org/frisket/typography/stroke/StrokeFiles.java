package org.frisket.typography.stroke;

import java.nio.charset.StandardCharsets;

import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.internal.source.FontFolders;

/** Tells stroke fonts from other files, by their content or, if that is damaged, their names. */
public final class StrokeFiles {

	private static final int HEAD = 8;
	private static final int SVG_HEAD = 64 << 10;

	private StrokeFiles() {
	}

	/** Whether a file can only be a stroke font, if it is a font at all. */
	public static boolean isStroke(byte[] file, String name) {
		return isSvg(file) || isHershey(file) || FontFolders.looksLikeStrokeFont(name);
	}

	/** Whether an SVG file holds a font near its beginning, and not only a drawing. */
	public static boolean holdsSvgFont(byte[] file) {
		return isSvg(file) && new String(file, 0, Math.min(file.length, SVG_HEAD), StandardCharsets.UTF_8).contains("<font");
	}

	private static boolean isSvg(byte[] file) {
		int i = file.length > 2 && (file[0] & 0xFF) == 0xEF ? 3 : 0;
		while (i < file.length && Character.isWhitespace(file[i])) {
			i++;
		}
		return i < file.length && file[i] == '<';
	}

	private static boolean isHershey(byte[] file) {
		if (file.length < HEAD + 2) {
			return false;
		}
		for (int i = 0; i < HEAD; i++) {
			if (file[i] != ' ' && (file[i] < '0' || file[i] > '9')) {
				return false;
			}
		}
		return file[HEAD - 1] != ' ';
	}

	/** @param name of the font if it has none of its own, and what errors call it */
	public static StrokeFont read(byte[] file, String name) throws UnreadableFontException {
		return isSvg(file) || !isHershey(file) && FontFolders.looksLikeSvg(name) ? SvgFontReader.read(file, name) : HersheyReader.read(file, name);
	}
}
