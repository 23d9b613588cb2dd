package org.frisket.prepare.internal.cures;

import java.util.List;

import org.frisket.editing.ChangeOperation;
import org.frisket.model.Element;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Cures;
import org.frisket.prepare.checks.Trial;

/** Against a picture that a blade or a pen would follow. */
public final class PictureCures implements Cures {

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return finding.id().equals(JobPreparer.PICTURE_WORKED)
				? List.of(Cure.of(Messages.PictureCures_print, finding.element(), Element.class,
						element -> ChangeOperation.kind(List.of(element), OperationKind.PRINT)))
				: List.of();
	}
}
