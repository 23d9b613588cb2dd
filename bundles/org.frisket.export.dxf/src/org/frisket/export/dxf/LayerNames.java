package org.frisket.export.dxf;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

import org.frisket.export.OperationInk;
import org.frisket.export.machine.Ascii;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;

/** A name for each operation on each layer, of the letters that R12 allows. */
final class LayerNames {

	/** Longest name of a table entry in R12, from memory. */
	private static final int LONGEST = 31;

	/** What is drawn together. */
	record Work(OperationKind operation, Layer layer) {
	}

	private final Map<Work, String> names = new LinkedHashMap<>();

	/** The operation first, then the layer; a number where two layers would have the same name. */
	String of(Work work) {
		return names.computeIfAbsent(work, this::made);
	}

	/** In the order in which they were asked for. */
	Map<Work, String> all() {
		return names;
	}

	private String made(Work work) {
		String operation = OperationInk.word(work.operation());
		String layer = work.layer().getName() == null ? "" : work.layer().getName();
		String name = plain(operation + (layer.isBlank() ? "" : "_" + layer.strip()));
		name = name.substring(0, Math.min(LONGEST, name.length()));
		String free = name;
		for (int i = 2; names.containsValue(free); i++) {
			String number = "_" + i;
			free = name.substring(0, Math.min(LONGEST - number.length(), name.length())) + number;
		}
		return free;
	}

	/** Capitals, digits, dollar, hyphen and underscore are all there is. */
	private static String plain(String name) {
		return Ascii.of(name).toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9$-]+", "_");
	}
}
