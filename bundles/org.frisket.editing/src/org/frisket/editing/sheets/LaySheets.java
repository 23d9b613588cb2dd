package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Guest;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Laying;
import org.frisket.model.Sheet;

/** Puts sheets as they were planned in the place of a job's sheets, and remembers how they were laid and with whom. */
public final class LaySheets extends RecordingEdit {

	private final Job job;
	private final List<Sheet> sheets;
	private final List<Guest> guests;
	private final Laying laying;

	/**
	 * @param sheets in the order in which they are worked; copied, and those that are not of the job already get new
	 *               ids
	 * @param guests all whose parts lie on them, and others that are to be guests; copied
	 * @param laying how they were laid; copied
	 */
	public LaySheets(Job job, List<Sheet> sheets, List<Guest> guests, Laying laying) {
		super(Messages.LaySheets_name);
		this.job = job;
		this.sheets = List.copyOf(EcoreUtil.copyAll(sheets));
		this.guests = List.copyOf(EcoreUtil.copyAll(guests));
		this.laying = EcoreUtil.copy(laying);
	}

	@Override
	public boolean canApply() {
		return job != null && laying != null;
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job);
	}

	@Override
	protected void change() {
		Set<String> own = new HashSet<>();
		for (Sheet sheet : job.getSheets()) {
			own.add(sheet.getId());
		}
		sheets.stream().filter(sheet -> sheet.getId() == null || !own.remove(sheet.getId())).forEach(sheet -> sheet.setId(null));
		job.getSheets().clear();
		job.getSheets().addAll(sheets);
		// only gives ids to those that have none
		Ids.complete(job);
		job.getGuests().clear();
		job.getGuests().addAll(guests);
		job.setLaying(laying);
	}
}
