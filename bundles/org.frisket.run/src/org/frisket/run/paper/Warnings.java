package org.frisket.run.paper;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.advice.Caution;
import org.frisket.material.advice.Cautions;
import org.frisket.prepare.Finding;
import org.frisket.run.LegWork;
import org.frisket.run.MachineRun;

/**
 * What to mind, each once.
 *
 * @param blocking because of which the sheet must not be run like this
 * @param others   the gravest first; that the makers' manuals come first is the last
 */
public record Warnings(List<String> blocking, List<String> others) {

	private static final String MANUAL = "manual";

	public Warnings {
		blocking = List.copyOf(blocking);
		others = List.copyOf(others);
	}

	/** Of each leg's own, and of those that hold for its work, whether or not somebody has thought of them. */
	public static Warnings of(MachineRun run) {
		Set<Caution> all = new LinkedHashSet<>();
		for (int i = 0; i < run.work().size(); i++) {
			LegWork work = run.work().get(i);
			all.addAll(work.cautions());
			all.addAll(Cautions.of(work.stock().family(), run.machine(), work.tool(),
					LegText.kind(run.run().legs().get(i).stage())));
		}
		Set<String> blocking = new LinkedHashSet<>();
		Set<String> others = new LinkedHashSet<>();
		for (Finding finding : run.findings()) {
			(finding.isBlocking() ? blocking : others)
					.add(NLS.bind(Messages.Warnings_finding, finding.message(), finding.cure()));
		}
		Set<String> last = new LinkedHashSet<>();
		for (Caution caution : all) {
			(caution.isBlocking() ? blocking : caution.id().equals(MANUAL) ? last : others).add(caution.text());
		}
		others.addAll(last);
		return new Warnings(new ArrayList<>(blocking), new ArrayList<>(others));
	}
}
