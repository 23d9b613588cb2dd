package org.frisket.typography.internal.face;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

import org.frisket.typography.face.Axis;
import org.frisket.typography.face.AxisSettings;
import org.frisket.typography.face.CodePoints;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.face.StyleClass;
import org.frisket.typography.internal.sfnt.FaceHeader;
import org.frisket.typography.internal.sfnt.Variations;

/** What a font file says about itself. */
public interface FaceTables {

	FaceHeader header();

	FontNames names();

	String licence();

	String licenceAddress();

	StyleClass style();

	Variations variations();

	List<String> features();

	/** By tag; only of features that the font itself names. */
	SortedMap<String, String> featureNames();

	List<String> glyphNames();

	CodePoints codePoints();

	SortedMap<Integer, List<Integer>> charactersOfGlyphs();

	/** A value for every axis, those that are not wanted otherwise at their normal value. */
	default AxisSettings settingsAt(AxisSettings wanted) {
		TreeMap<String, Double> all = new TreeMap<>();
		for (Axis axis : variations().axes()) {
			all.put(axis.tag(), axis.clamped(wanted.values().getOrDefault(axis.tag(), axis.normal())));
		}
		return new AxisSettings(all);
	}

	/** The names of the named instance that has just these values, if there is one, else those of the plain face. */
	default FontNames namesAt(AxisSettings settings) {
		return variations().instances().stream().filter(i -> settingsAt(i.settings()).equals(settings)).findFirst()
				.map(names()::ofInstance).orElse(names());
	}

	/** A file's name without folder and ending. */
	static String stem(String font) {
		String file = font.substring(Math.max(font.lastIndexOf('/'), font.lastIndexOf('\\')) + 1);
		int dot = file.lastIndexOf('.');
		return dot > 0 ? file.substring(0, dot) : file;
	}
}
