package org.frisket.geometry;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.PathIterator;
import java.io.File;

/** Letters of real fonts as the Java platform reads them. */
public final class Letters {

	public static final File SANS = new File("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf");
	public static final File SERIF = new File("/usr/share/fonts/truetype/dejavu/DejaVuSerif-Bold.ttf");

	private Letters() {
	}

	/** @param squeeze by how much each letter stands nearer to the one before, in mm */
	public static Outline word(File file, String word, double size, double squeeze) throws Exception {
		Font font = Font.createFont(Font.TRUETYPE_FONT, file).deriveFont((float) size);
		GlyphVector glyphs = font.createGlyphVector(new FontRenderContext(null, true, true), word);
		Outline outline = Outline.EMPTY;
		for (int i = 0; i < glyphs.getNumGlyphs(); i++) {
			Outline glyph = outline(glyphs.getGlyphOutline(i).getPathIterator(null));
			outline = outline.plus(glyph.transformed(Transform.translation(-i * squeeze, 0)));
		}
		return outline;
	}

	public static Outline outline(PathIterator path) {
		OutlineBuilder pen = new OutlineBuilder();
		double[] c = new double[6];
		for (; !path.isDone(); path.next()) {
			switch (path.currentSegment(c)) {
			case PathIterator.SEG_MOVETO -> pen.moveTo(new Point(c[0], c[1]));
			case PathIterator.SEG_LINETO -> pen.lineTo(new Point(c[0], c[1]));
			case PathIterator.SEG_QUADTO -> pen.quadraticTo(new Point(c[0], c[1]), new Point(c[2], c[3]));
			case PathIterator.SEG_CUBICTO ->
				pen.cubicTo(new Point(c[0], c[1]), new Point(c[2], c[3]), new Point(c[4], c[5]));
			default -> pen.close();
			}
		}
		return pen.build();
	}
}
