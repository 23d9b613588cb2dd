package org.frisket.ui.sheets.internal.sheets;

import org.frisket.model.Job;
import org.frisket.model.Placement;

/** Names a part among those of a job and its guests. @param job id of the job whose it is */
record PartKey(String job, String part) {

	static PartKey of(Job host, Placement placement) {
		return new PartKey(placement.getJob() == null ? host.getId() : placement.getJob(), placement.getPart());
	}
}
