package org.frisket.orders.work;

import java.io.IOException;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.frisket.material.advice.Caution;
import org.frisket.material.advice.Cautions;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.model.OperationKind;
import org.frisket.run.Workshop;
import org.frisket.studio.StudioFolder;

/** What to mind before the studio's machine is started, each once, the gravest first. */
public final class RunCautions {

	private RunCautions() {
	}

	/** @param stocks that are to be cut, by their ids */
	public static List<String> of(StudioFolder studio, Collection<String> stocks) throws IOException {
		Workshop workshop = Workshop.of(SettingsDesk.look(studio));
		Optional<Tool> tool = workshop.desk().usualTool(OperationKind.CUT, "")
				.or(() -> ToolKind.usual(OperationKind.CUT).map(ToolOptions::usual));
		Set<String> grave = new LinkedHashSet<>();
		Set<String> others = new LinkedHashSet<>();
		Set<String> last = new LinkedHashSet<>();
		if (tool.isPresent()) {
			for (String stock : stocks.isEmpty() ? List.of("") : stocks) {
				List<Caution> cautions = Cautions.of(workshop.facts(stock.isEmpty() ? null : stock).family(), workshop.machine(),
						tool.get(), OperationKind.CUT);
				for (Caution caution : cautions) {
					Set<String> kind = caution.isBlocking() ? grave : caution == cautions.get(cautions.size() - 1) ? last : others;
					kind.add(caution.text());
				}
			}
		}
		grave.addAll(others);
		grave.addAll(last);
		return List.copyOf(grave);
	}
}
