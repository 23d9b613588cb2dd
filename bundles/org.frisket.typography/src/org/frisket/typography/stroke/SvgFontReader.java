package org.frisket.typography.stroke;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.PathDataException;
import org.frisket.geometry.Transform;
import org.frisket.typography.UnreadableFontException;

/**
 * Reads fonts as SVG 1.1 has them (section 20, Fonts), for single lines: glyphs whose paths are open. What a glyph
 * closes stays closed. Files are taken to be in UTF-8. Kerning pairs and glyphs of other orientations or languages
 * are passed over.
 */
public final class SvgFontReader {

	private static final int LARGEST = 16 << 20;
	private static final int MOST_GLYPHS = 65_535;
	private static final double USUAL_SHARE_OF_EM = 0.7;

	private final String font;
	private final Map<String, StrokeGlyph> glyphs = new TreeMap<>();
	private String family = "";
	private double advance;
	private double unitsPerEm = 1000;
	private double capHeight;
	private boolean inFont;

	private SvgFontReader(String font) {
		this.font = font;
	}

	/** @param name what errors call the font, and the font if it does not say itself */
	public static StrokeFont read(byte[] file, String name) throws UnreadableFontException {
		if (file.length > LARGEST) {
			throw new UnreadableFontException(name, "it is too big for a stroke font");
		}
		SvgFontReader reader = new SvgFontReader(name);
		XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
		factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
		factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
		try {
			String text = new String(file, StandardCharsets.UTF_8);
			String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
			XMLStreamReader xml = factory.createXMLStreamReader(new StringReader(plain));
			while (xml.hasNext()) {
				if (xml.next() == XMLStreamReader.START_ELEMENT) {
					reader.start(xml);
				}
			}
		} catch (XMLStreamException broken) {
			throw new UnreadableFontException(name, "it is not well formed in line "
					+ broken.getLocation().getLineNumber());
		}
		return reader.font();
	}

	private void start(XMLStreamReader xml) throws UnreadableFontException {
		switch (xml.getLocalName()) {
		case "font" -> {
			inFont = true;
			advance = number(xml, "horiz-adv-x", 0);
		}
		case "font-face" -> {
			String named = xml.getAttributeValue(null, "font-family");
			family = named == null ? "" : named.strip();
			unitsPerEm = number(xml, "units-per-em", 1000);
			capHeight = number(xml, "cap-height", 0);
		}
		case "glyph" -> glyph(xml);
		default -> {
			// nothing that a line of text needs
		}
		}
	}

	private void glyph(XMLStreamReader xml) throws UnreadableFontException {
		String characters = xml.getAttributeValue(null, "unicode");
		if (!inFont || characters == null || characters.isEmpty() || characters.length() > StrokeFont.LONGEST) {
			return;
		}
		if (glyphs.size() == MOST_GLYPHS) {
			throw new UnreadableFontException(font, "it has more than " + MOST_GLYPHS + " glyphs");
		}
		String path = xml.getAttributeValue(null, "d");
		try {
			// in a font y points up
			Outline strokes = PathData.parse(path == null ? "" : path).transformed(Transform.scaling(1, -1));
			glyphs.putIfAbsent(characters, new StrokeGlyph(strokes, number(xml, "horiz-adv-x", advance)));
		} catch (PathDataException broken) {
			throw new UnreadableFontException(font, "the glyph of “" + characters + "” in line "
					+ xml.getLocation().getLineNumber() + " has a path that cannot be read: " + broken.getMessage());
		}
	}

	private double number(XMLStreamReader xml, String attribute, double otherwise) throws UnreadableFontException {
		String text = xml.getAttributeValue(null, attribute);
		if (text == null) {
			return otherwise;
		}
		if (!text.strip().matches("\\+?\\d{1,7}(\\.\\d{0,9})?")) {
			throw new UnreadableFontException(font, attribute + " is “" + text + "” in line "
					+ xml.getLocation().getLineNumber());
		}
		return Double.parseDouble(text.strip());
	}

	private StrokeFont font() throws UnreadableFontException {
		if (glyphs.isEmpty()) {
			throw new UnreadableFontException(font, inFont ? "it holds no glyphs" : "it holds no font");
		}
		StrokeGlyph capital = glyphs.get("H");
		Bounds bounds = capital == null ? Bounds.EMPTY : capital.strokes().bounds();
		double height = bounds.height() > 0 ? bounds.height() : capHeight;
		return new StrokeFont(family.isEmpty() ? font : family, glyphs,
				height > 0 ? height : USUAL_SHARE_OF_EM * Math.max(1, unitsPerEm), "");
	}
}
