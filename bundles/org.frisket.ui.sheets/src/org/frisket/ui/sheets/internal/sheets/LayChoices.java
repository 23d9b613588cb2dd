package org.frisket.ui.sheets.internal.sheets;

import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Laying;

/** How parts are to be laid, as a job has it or as it would be by itself. */
final class LayChoices {

	private LayChoices() {
	}

	/** A copy to be changed. */
	static Laying of(Job job) {
		Laying made = FrisketFactory.INSTANCE.createLaying();
		Laying own = job == null ? null : job.getLaying();
		if (own != null) {
			made.setWidth(own.getWidth());
			made.setHeight(own.getHeight());
			made.setRoll(own.isRoll());
			made.setGap(own.getGap());
			made.setMargin(own.getMargin());
			made.setTurning(own.getTurning());
			made.setApart(own.isApart());
			made.setByJob(own.isByJob());
			made.setSeed(own.getSeed());
		}
		return made;
	}
}
