package org.frisket.editing.sheets;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;

/** Asks another job onto the sheets of this one, or sends it away with all its parts that lie there. */
public final class ChangeGuests extends RecordingEdit {

	private final Job job;
	private final Guest guest;
	private final boolean comes;

	private ChangeGuests(String name, Job job, Guest guest, boolean comes) {
		super(NLS.bind(name, title(guest)));
		this.job = job;
		this.guest = guest;
		this.comes = comes;
	}

	/** @param guest with an id that neither the job nor another guest has; copied */
	public static ChangeGuests invite(Job job, Guest guest) {
		return new ChangeGuests(Messages.ChangeGuests_invite, job, EcoreUtil.copy(guest), true);
	}

	/** @param guest of the job */
	public static ChangeGuests dismiss(Job job, Guest guest) {
		return new ChangeGuests(Messages.ChangeGuests_dismiss, job, guest, false);
	}

	private static String title(Guest guest) {
		return guest.getTitle() == null || guest.getTitle().isBlank() ? String.valueOf(guest.getJob()) : guest.getTitle();
	}

	@Override
	public boolean canApply() {
		if (!comes) {
			return job.getGuests().contains(guest);
		}
		return guest.getJob() != null && !guest.getJob().equals(job.getId())
				&& job.getGuests().stream().noneMatch(each -> guest.getJob().equals(each.getJob()));
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job);
	}

	@Override
	protected void change() {
		if (comes) {
			job.getGuests().add(guest);
			return;
		}
		for (Sheet sheet : job.getSheets()) {
			List<Placement> gone = new ArrayList<>(sheet.getPlacements());
			gone.removeIf(each -> !Objects.equals(each.getJob(), guest.getJob()));
			sheet.getPlacements().removeAll(gone);
		}
		job.getGuests().remove(guest);
	}
}
