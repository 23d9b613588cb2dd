package org.frisket.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.frisket.typography.FontFace;

/** How much room words take up on pages, in mm. */
public final class Words {

	private Words() {
	}

	/** @throws IOException if this installation lacks the font of the pages */
	public static double width(String text, double capHeight) throws IOException {
		FontFace face = Labels.face();
		return Labels.writable(text, face).codePoints().mapToDouble(c -> face.advance(face.glyph(c))).sum() * capHeight
				/ face.capHeight();
	}

	/**
	 * A text in lines that fit into the room, broken at spaces; a word that does not fit stands alone.
	 *
	 * @throws IOException if this installation lacks the font of the pages
	 */
	public static List<String> lines(String text, double capHeight, double room) throws IOException {
		List<String> lines = new ArrayList<>();
		StringBuilder line = new StringBuilder();
		for (String word : text.strip().split("\\s+")) {
			if (!line.isEmpty() && width(line + " " + word, capHeight) > room) {
				lines.add(line.toString());
				line.setLength(0);
			}
			line.append(line.isEmpty() ? "" : " ").append(word);
		}
		lines.add(line.toString());
		return lines;
	}
}
