package org.frisket.typography.internal.sfnt;

import java.io.IOException;
import java.nio.ByteBuffer;

import org.frisket.typography.UnreadableFontException;

/**
 * What table OS/2 (or, without it, {@code head}) says of a face's style.
 *
 * @param weight 1 to 1000, 400 for regular
 * @param width  1 (narrowest) to 9 (widest), 5 for normal
 */
public record StyleFigures(int weight, int width, boolean italic) {

	private static final int REGULAR = 400;
	private static final int BOLD = 700;
	private static final int NORMAL_WIDTH = 5;

	public static StyleFigures read(TableDirectory tables) throws UnreadableFontException, IOException {
		int macStyle = Short.toUnsignedInt(tables.table("head", 54).getShort(44));
		if (tables.length("OS/2") < 64) {
			return new StyleFigures((macStyle & 1) != 0 ? BOLD : REGULAR, NORMAL_WIDTH, (macStyle & 2) != 0);
		}
		ByteBuffer table = tables.table("OS/2", 64);
		int weight = Short.toUnsignedInt(table.getShort(4));
		int width = Short.toUnsignedInt(table.getShort(6));
		int selection = Short.toUnsignedInt(table.getShort(62));
		// bit 0 of fsSelection is italic, bit 9 oblique
		boolean italic = (selection & 0x201) != 0 || (macStyle & 2) != 0;
		return new StyleFigures(weight < 1 || weight > 1000 ? REGULAR : weight,
				width < 1 || width > 9 ? NORMAL_WIDTH : width, italic);
	}
}
