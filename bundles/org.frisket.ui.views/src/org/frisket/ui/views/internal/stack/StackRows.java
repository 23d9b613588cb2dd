package org.frisket.ui.views.internal.stack;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.model.Element;
import org.frisket.model.Layer;
import org.frisket.prepare.Finding;
import org.frisket.ui.bench.JobOnBench;

/** The rows of a job one under the other, with what is said of their layers. Heights are in pixels from the top. */
final class StackRows {

	private final List<Row> rows;
	private final List<Integer> tops = new ArrayList<>();
	private final Map<Layer, LayerState> states = new HashMap<>();
	private final int lineHeight;
	private int height;

	/** @param bench null for no rows */
	StackRows(JobOnBench bench, int lineHeight) {
		this.lineHeight = lineHeight;
		rows = bench == null ? new ArrayList<>() : Row.of(bench.job());
		for (int i = 0; i < rows.size(); i++) {
			tops.add(height);
			height += heightOf(i);
			if (rows.get(i).isLayer()) {
				states.put(rows.get(i).layer(), LayerState.of(bench, rows.get(i).layer()));
			}
		}
	}

	List<Row> list() {
		return rows;
	}

	/** Of all rows together. */
	int height() {
		return height;
	}

	int topOf(int index) {
		return tops.get(index);
	}

	int heightOf(int index) {
		return rows.get(index).isLayer() ? StackPainter.layerHeight(lineHeight)
				: StackPainter.elementHeight(lineHeight);
	}

	/** The last row that begins at or above a height; -1 if there is none. */
	int indexAt(int y) {
		int found = Collections.binarySearch(tops, y);
		return found >= 0 ? found : -found - 2;
	}

	LayerState state(Layer layer) {
		return states.get(layer);
	}

	List<Finding> findingsOf(Row row) {
		Element element = row.element();
		return states.get(row.layer()).findings().stream()
				.filter(finding -> finding.element().equals(element.getId())).toList();
	}
}
