package org.frisket.ui.views.internal.stack;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

import org.frisket.model.Element;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedLayer;
import org.frisket.ui.bench.JobOnBench;

/**
 * What the stack says of a layer.
 *
 * @param pieces     connected pieces to be cut from it; empty before they were counted
 * @param findings   of its elements, the gravest first
 * @param operations what is done to its elements, in a fixed order
 */
record LayerState(OptionalInt pieces, List<Finding> findings, Set<OperationKind> operations) {

	static LayerState of(JobOnBench bench, Layer layer) {
		Set<String> ids = new HashSet<>();
		Set<OperationKind> operations = EnumSet.noneOf(OperationKind.class);
		for (Element element : layer.getElements()) {
			ids.add(element.getId());
			element.getOperations().forEach(operation -> operations.add(operation.getKind()));
		}
		List<Finding> findings = bench.findings().stream().filter(finding -> ids.contains(finding.element())).toList();
		return new LayerState(pieces(bench, layer), findings, operations);
	}

	private static OptionalInt pieces(JobOnBench bench, Layer layer) {
		if (bench.prepared().isEmpty()) {
			return OptionalInt.empty();
		}
		for (PreparedLayer prepared : bench.prepared().get().layers()) {
			if (layer.getId().equals(prepared.layer().getId())) {
				return OptionalInt
						.of(prepared.elements().stream().mapToInt(e -> e.region().pieces().size()).sum());
			}
		}
		return OptionalInt.empty();
	}
}
