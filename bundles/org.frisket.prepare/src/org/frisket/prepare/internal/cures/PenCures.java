package org.frisket.prepare.internal.cures;

import java.util.List;

import org.frisket.editing.elements.ChangeOperation;
import org.frisket.model.Element;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Cures;
import org.frisket.prepare.checks.Trial;

/** Against pen lettering that a blade would follow. */
public final class PenCures implements Cures {

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return finding.id().equals(JobPreparer.PEN_LETTERING_CUT)
				? List.of(Cure.of(Messages.PenCures_draw, finding.element(), Element.class,
						element -> ChangeOperation.kind(List.of(element), OperationKind.DRAW)))
				: List.of();
	}
}
