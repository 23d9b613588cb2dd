package org.frisket.ui.views.internal.stack;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.frisket.model.Element;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Finding;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.views.StockNotes;

/** The rows of a job one under the other, with what is said of each. Heights are in pixels from the top. */
final class StackRows {

	private final List<Row> rows;
	private final List<Integer> tops = new ArrayList<>();
	private final Map<Row, Integer> places = new HashMap<>();
	private final Map<Row, RowState> states = new HashMap<>();
	private final int lineHeight;
	private final Function<String, Optional<StockNotes.Note>> stocks;
	private int height;

	/**
	 * @param bench  null for no rows
	 * @param stocks what the studio knows of a stock by its id
	 */
	StackRows(JobOnBench bench, int lineHeight, Function<String, Optional<StockNotes.Note>> stocks) {
		this.lineHeight = lineHeight;
		this.stocks = stocks;
		rows = bench == null ? new ArrayList<>() : Row.of(bench.job());
		for (int i = 0; i < rows.size(); i++) {
			tops.add(height);
			places.put(rows.get(i), i);
			height += heightOf(i);
		}
		if (bench != null) {
			findStates(bench);
		}
	}

	private void findStates(JobOnBench bench) {
		Map<String, Integer> pieces = new HashMap<>();
		bench.prepared().ifPresent(prepared -> prepared.layers().forEach(layer -> layer.elements()
				.forEach(element -> pieces.put(element.element().getId(), element.region().pieces().size()))));
		boolean counted = bench.prepared().isPresent();
		Map<String, List<Finding>> findings = bench.findings().stream().collect(Collectors.groupingBy(Finding::element));
		for (Row row : rows) {
			List<Element> elements = row.isLayer() ? row.layer().getElements() : List.of(row.element());
			Set<OperationKind> operations = EnumSet.noneOf(OperationKind.class);
			elements.forEach(element -> element.getOperations().forEach(each -> operations.add(each.getKind())));
			int count = elements.stream().mapToInt(element -> pieces.getOrDefault(element.getId(), 0)).sum();
			states.put(row, new RowState(counted ? OptionalInt.of(count) : OptionalInt.empty(),
					row.isLayer() ? ofLayer(row, bench.findings())
							: findings.getOrDefault(row.element().getId(), List.of()),
					operations, row.isLayer() ? Optional.ofNullable(row.layer().getStock()).flatMap(stocks) : Optional.empty()));
		}
	}

	private static List<Finding> ofLayer(Row row, List<Finding> findings) {
		Set<String> ids = row.layer().getElements().stream().map(Element::getId).collect(Collectors.toSet());
		return findings.stream().filter(finding -> ids.contains(finding.element())).toList();
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
		return rows.get(index).isLayer() ? RowLayout.layerHeight(lineHeight) : RowLayout.elementHeight(lineHeight);
	}

	/** How many rows stand above; -1 if the row is not there. */
	int indexOf(Row row) {
		return places.getOrDefault(row, -1);
	}

	/** The last row that begins at or above a height; -1 if there is none. */
	int indexAt(int y) {
		int found = Collections.binarySearch(tops, y);
		return found >= 0 ? found : -found - 2;
	}

	/** The middle of an element's row; -1 if it has none. */
	int middleOf(Element element) {
		int index = element.eContainer() == null ? -1 : indexOf(Row.of(element));
		return index < 0 ? -1 : topOf(index) + heightOf(index) / 2;
	}

	RowState state(Row row) {
		return states.get(row);
	}
}
