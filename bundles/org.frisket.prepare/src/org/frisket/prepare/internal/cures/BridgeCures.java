package org.frisket.prepare.internal.cures;

import java.util.List;

import org.frisket.editing.wording.ChangeBridges;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Cures;
import org.frisket.prepare.checks.Trial;

/** Against insides of letters that fall out because their bridges were taken away. */
public final class BridgeCures implements Cures {

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return finding.id().equals("island-loose") ? List.of(Cure.of(Messages.BridgeCures_byRule, finding.element(),
				Wording.class, ChangeBridges::byRule)) : List.of();
	}
}
