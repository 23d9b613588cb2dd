package org.frisket.prepare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;

/** A rough import can have hundreds of findings of one kind, which nobody goes through one by one. */
final class Gathering {

	/** Of one kind on one element; more than a person looks at. */
	static final int MOST = 25;

	private Gathering() {
	}

	/** The first ones of each kind on each element; the last of them stands for all that come after. */
	static List<Finding> gathered(List<Finding> all) {
		record Kind(String id, String element) {
		}
		Map<Kind, Integer> counts = new HashMap<>();
		all.forEach(finding -> counts.merge(new Kind(finding.id(), finding.element()), 1, Integer::sum));
		Map<Kind, Integer> told = new HashMap<>();
		List<Finding> gathered = new ArrayList<>();
		for (Finding finding : all) {
			Kind kind = new Kind(finding.id(), finding.element());
			int number = told.merge(kind, 1, Integer::sum);
			int others = counts.get(kind) - MOST;
			if (number < MOST || others <= 0) {
				gathered.add(finding);
			} else if (number == MOST) {
				gathered.add(finding.standingFor(others, NLS.bind(Messages.Gathering_more, finding.message(), others)));
			}
		}
		return gathered;
	}
}
