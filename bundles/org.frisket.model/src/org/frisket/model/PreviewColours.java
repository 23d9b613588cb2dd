package org.frisket.model;

import java.util.List;

/** Colours that new layers are shown in until a stock says better, as {@code #rrggbb}. */
public final class PreviewColours {

	/** Of a layer that holds wordings. */
	public static final String WORDING = "#f4ecdc";

	private static final List<String> MATS = List.of("#1d6f78", "#e0a63a", "#7a2f3d", "#3d4a6b");

	private PreviewColours() {
	}

	/** Of a mat with {@code before} mats in front of it; after the last colour the first one comes again. */
	public static String mat(int before) {
		return MATS.get(Math.floorMod(before, MATS.size()));
	}
}
