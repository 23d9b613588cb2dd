package org.frisket.typography.internal.shape;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Outline;

/**
 * A face in the hands of the Java runtime, for platforms where HarfBuzz cannot be loaded. Kerning and ligatures
 * work; a language, other features and axes have no effect, and lines run across only.
 */
public final class RuntimeEngine implements FontEngine {

	/** Glyph numbers from here on stand for nothing to see. */
	private static final int INVISIBLE = 0xFFFE;
	private static final FontRenderContext UNHINTED = new FontRenderContext(null, true, true);

	private final Font font;

	private RuntimeEngine(Font font) {
		this.font = font;
	}

	/**
	 * @param bytes a font file that has been checked
	 * @throws IOException if the runtime refuses it
	 */
	public static RuntimeEngine open(byte[] bytes, int index, int unitsPerEm) throws IOException {
		try {
			Font[] faces = Font.createFonts(new ByteArrayInputStream(bytes));
			if (index >= faces.length) {
				throw new IOException("the runtime sees " + faces.length + " faces only");
			}
			return new RuntimeEngine(faces[index].deriveFont((float) unitsPerEm));
		} catch (FontFormatException | RuntimeException | LinkageError refused) {
			throw new IOException("the Java runtime refuses it", refused);
		}
	}

	@Override
	public int glyph(int codePoint) {
		if (!font.canDisplay(codePoint)) {
			return 0;
		}
		int glyph = font.createGlyphVector(UNHINTED, Character.toChars(codePoint)).getGlyphCode(0);
		return glyph >= INVISIBLE || glyph == font.getMissingGlyphCode() ? 0 : glyph;
	}

	@Override
	public Outline outline(int glyph) {
		if (glyph < 0 || glyph >= font.getNumGlyphs()) {
			return Outline.EMPTY;
		}
		Shape shape = font.createGlyphVector(UNHINTED, new int[] { glyph }).getGlyphOutline(0);
		OutlinePen pen = new OutlinePen(1, 1);
		double[] c = new double[6];
		for (PathIterator path = shape.getPathIterator(null); !path.isDone(); path.next()) {
			switch (path.currentSegment(c)) {
			case PathIterator.SEG_MOVETO -> pen.moveTo(c[0], c[1]);
			case PathIterator.SEG_LINETO -> pen.lineTo(c[0], c[1]);
			case PathIterator.SEG_QUADTO -> pen.quadraticTo(c[0], c[1], c[2], c[3]);
			case PathIterator.SEG_CUBICTO -> pen.cubicTo(c[0], c[1], c[2], c[3], c[4], c[5]);
			default -> pen.close();
			}
		}
		return pen.outline();
	}

	@Override
	public double advance(int glyph) {
		return glyph < 0 || glyph >= font.getNumGlyphs() ? 0
				: font.createGlyphVector(UNHINTED, new int[] { glyph }).getGlyphMetrics(0).getAdvanceX();
	}

	@Override
	public List<PlacedGlyph> shape(char[] text, Run run, Shaping shaping) {
		boolean kerning = shaping.features().value("kern").orElse(shaping.kerning() ? 1 : 0) != 0;
		boolean ligatures = shaping.features().value("liga").orElse(shaping.ligatures() ? 1 : 0) != 0;
		Font set = font.deriveFont(Map.of(TextAttribute.KERNING, kerning ? TextAttribute.KERNING_ON : 0,
				TextAttribute.LIGATURES, ligatures ? TextAttribute.LIGATURES_ON : 0));
		GlyphVector vector = set.layoutGlyphVector(UNHINTED, text, run.start(), run.limit(),
				run.rightToLeft() ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT);
		List<PlacedGlyph> glyphs = new ArrayList<>();
		for (int i = 0; i < vector.getNumGlyphs(); i++) {
			int glyph = vector.getGlyphCode(i);
			if (glyph < INVISIBLE) {
				Point2D place = vector.getGlyphPosition(i);
				int cluster = cluster(text, run.start(), run.start() + vector.getGlyphCharIndex(i));
				glyphs.add(new PlacedGlyph(glyph == font.getMissingGlyphCode() ? 0 : glyph, cluster, place.getX(),
						place.getY(), vector.getGlyphPosition(i + 1).getX() - place.getX()));
			}
		}
		return glyphs;
	}

	/** Accents belong to the letter before them. */
	private static int cluster(char[] text, int start, int index) {
		int cluster = index;
		while (cluster > start && (Character.isLowSurrogate(text[cluster])
				|| isMark(Character.codePointAt(text, cluster, text.length)))) {
			cluster--;
		}
		return cluster;
	}

	private static boolean isMark(int codePoint) {
		int type = Character.getType(codePoint);
		return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK
				|| type == Character.COMBINING_SPACING_MARK;
	}
}
