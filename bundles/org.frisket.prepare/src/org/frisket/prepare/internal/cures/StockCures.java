package org.frisket.prepare.internal.cures;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.elements.ChangeOperation;
import org.frisket.editing.layers.SetLayerStock;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Finding;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Trial;

/** What is missing on a layer, or of an element, is decided. */
public final class StockCures {

	private StockCures() {
	}

	/** The stock of the other layers, the most frequent one. */
	public static List<Cure> of(Finding finding, Trial trial) {
		Layer layer = trial.element(finding).map(Jobs::layerOf).orElse(null);
		if (layer == null || layer.getStock() != null) {
			return List.of();
		}
		List<String> stocks = Jobs.jobOf(layer).getLayers().stream().map(Layer::getStock).filter(Objects::nonNull).toList();
		return stocks.stream().distinct()
				.max(Comparator.comparingInt((String stock) -> Collections.frequency(stocks, stock))
						.thenComparing(Comparator.reverseOrder()))
				.map(stock -> List.of(Cure.of(NLS.bind(Messages.StockCures_stock, stock), finding.element(), Element.class,
						element -> new SetLayerStock(Jobs.layerOf(element), stock))))
				.orElse(List.of());
	}

	/** It is cut where it encloses something, or drawn. */
	public static List<Cure> ofNoOperation(Finding finding, Trial trial) {
		List<Cure> cures = new ArrayList<>();
		if (trial.prepared(finding).filter(prepared -> !prepared.region().isEmpty()).isPresent()) {
			cures.add(worked(Messages.StockCures_cut, finding, OperationKind.CUT));
		}
		cures.add(worked(Messages.StockCures_draw, finding, OperationKind.DRAW));
		return cures;
	}

	private static Cure worked(String name, Finding finding, OperationKind kind) {
		return Cure.of(name, finding.element(), Element.class, element -> ChangeOperation.add(List.of(element), kind));
	}
}
