package org.frisket.orders.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;

/**
 * That each copy of a job has a piece in a stock and colour: all that it has in it, however many parts that is. A piece is
 * whole or missing; half a piece is none.
 *
 * @param print whether something is printed on it
 * @param cut   whether it goes through the machine, be it to be cut, creased or drawn on
 */
public record Need(StockColour of, boolean print, boolean cut) {

	/** What a document says, without working out any outline; in the order of its layers. */
	public static List<Need> of(Job job) {
		Set<Element> hidden = Jobs.parts(job);
		Map<StockColour, Need> needs = new LinkedHashMap<>();
		for (Layer layer : job.getLayers()) {
			StockColour of = StockColour.of(layer);
			for (Element element : layer.getElements()) {
				if (!Jobs.isShown(element) || hidden.contains(element)) {
					continue;
				}
				for (Operation operation : element.getOperations()) {
					boolean print = operation.getKind() == OperationKind.PRINT;
					needs.merge(of, new Need(of, print, !print),
							(one, other) -> new Need(of, one.print || other.print, one.cut || other.cut));
				}
			}
		}
		return new ArrayList<>(needs.values());
	}

	public boolean has(Step step) {
		return step == Step.PRINT ? print : cut;
	}
}
