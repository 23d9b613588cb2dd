package org.frisket.material.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.options.Option;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Process;
import org.frisket.material.trials.Settings;
import org.frisket.model.OperationKind;

/** Settings by rules of thumb, and what is said of each. */
final class Rules {

	private final RulesOfThumb rules;
	private final Work work;

	Rules(RulesOfThumb rules, Work work) {
		this.rules = rules;
		this.work = work;
	}

	Settings settings() {
		return new Settings(exposure(), work.machine().pressure().ofNeutral(rules.startPressure() / 100),
				work.machine().speed().ofNeutral(rules.startSpeed() / 100), passes());
	}

	private boolean hasExposure() {
		return work.tool() instanceof Blade && work.machine().process() == Process.BLADE;
	}

	private double exposure() {
		if (!hasExposure() || caliper() == 0) {
			return 0;
		}
		double over = work.operation() == OperationKind.KISS_CUT ? 0 : rules.exposureOver();
		return Math.rint((caliper() + over) * 100) / 100;
	}

	/** Measured, else from the weight; 0 if neither is known. */
	private double caliper() {
		return work.stock().caliperMm() > 0 ? work.stock().caliperMm() : work.stock().grammage() * rules.bulk() / 1000;
	}

	private double grammage() {
		return work.stock().grammage() > 0 ? work.stock().grammage() : work.stock().caliperMm() * 1000 / rules.bulk();
	}

	private int passes() {
		boolean cuts = work.operation() == OperationKind.CUT && work.machine().process() != Process.FOIL;
		return cuts ? Math.min(rules.passes(grammage()), work.machine().mostPasses()) : 1;
	}

	/** Why these; all are rules of thumb. */
	List<String> reasons() {
		List<String> reasons = new ArrayList<>();
		reasons.add(Messages.Rules_noTrials);
		exposureReason(reasons);
		if (work.operation() == OperationKind.CUT && grammage() > 0) {
			reasons.add(NLS.bind(Messages.Rules_passes, new Object[] { passes(), Measure.plain(rules.onePassTo(), 1),
					Measure.plain(rules.twoPassesTo(), 1),
					origin(Messages.Rules_practice, RulesOfThumb.ONE_PASS, RulesOfThumb.TWO_PASSES) }));
		}
		reasons.add(NLS.bind(Messages.Rules_start, new Object[] { Measure.plain(rules.startPressure(), 1),
				Measure.plain(rules.startSpeed(), 1),
				origin(Messages.Rules_guess, RulesOfThumb.PRESSURE, RulesOfThumb.SPEED) }));
		return reasons;
	}

	/** Whose these rules are. @param usual what is said of them while the studio has left them as they come */
	private String origin(String usual, Option... options) {
		return Arrays.stream(options).anyMatch(option -> rules.isOwn(option.name())) ? Messages.Rules_own : usual;
	}

	/** Adds why the blade stands out as far as it does. */
	void exposureReason(List<String> reasons) {
		if (!hasExposure()) {
			return;
		}
		if (caliper() == 0) {
			reasons.add(Messages.Rules_noCaliper);
			return;
		}
		String caliper = Measure.plain(caliper(), 3);
		reasons.add(work.operation() == OperationKind.KISS_CUT ? NLS.bind(Messages.Rules_kissExposure, caliper)
				: NLS.bind(Messages.Rules_exposure, new Object[] { caliper, Measure.plain(rules.exposureOver(), 3),
						origin(Messages.Rules_practice, RulesOfThumb.EXPOSURE) }));
		if (work.stock().caliperMm() == 0) {
			reasons.add(NLS.bind(Messages.Rules_bulk, new Object[] { caliper, Measure.plain(rules.bulk(), 2),
					origin(Messages.Rules_practice, RulesOfThumb.BULK) }));
		}
	}
}
