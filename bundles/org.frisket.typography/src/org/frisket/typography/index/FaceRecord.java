package org.frisket.typography.index;

import java.lang.Character.UnicodeScript;
import java.util.Set;

import org.frisket.typography.FontFace;
import org.frisket.typography.face.CodePoints;
import org.frisket.typography.face.Embedding;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.face.StyleClass;

/**
 * What is kept of a face. Heights are shares of the em, measured on the outlines.
 *
 * @param digest         SHA-256 of the whole file in lower-case hexadecimal
 * @param xHeight        0 if the face has no small x
 * @param glyphs         how many there are
 * @param loneGlyphs     how many of them stand for no character by themselves: alternates, ligatures, ornaments
 * @param axes           how many axes a variable font has, else 0
 * @param licence        at most {@value #LONGEST_LICENCE} characters of it; may be empty
 * @param licenceAddress may be empty
 * @param scripts        those it can set, see {@link Scripts}
 * @param stroke         whether its letters are lines for a pen
 */
public record FaceRecord(FontNames names, String digest, StyleClass style, double capHeight, double xHeight,
		int unitsPerEm, int glyphs, int loneGlyphs, int axes, int embeddingBits, String licence, String licenceAddress,
		CodePoints characters, Set<UnicodeScript> scripts, boolean stroke) {

	public static final int LONGEST_LICENCE = 2_000;

	/** Everything is read and measured anew. */
	public static FaceRecord of(FontFace face) {
		CodePoints characters = face.codePoints();
		double em = face.unitsPerEm();
		return new FaceRecord(face.names(), face.digest(), face.styleClass(), face.capHeight() / em,
				face.xHeight() / em, face.unitsPerEm(), face.glyphCount(),
				face.glyphCount() - face.charactersOfGlyphs().size(), face.axes().size(), face.embedding(),
				shortened(face.licence()), shortened(face.licenceAddress()), characters, Scripts.of(characters),
				face.isStroke());
	}

	private static String shortened(String text) {
		return text.length() <= LONGEST_LICENCE ? text : text.substring(0, LONGEST_LICENCE);
	}

	public Embedding embedding() {
		return Embedding.of(embeddingBits);
	}

	/** Whether every character of a text has a glyph; line ends and invisible signs need none. */
	public boolean has(String text) {
		return characters.containsAll(CodePoints.in(text));
	}
}
