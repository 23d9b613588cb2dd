package org.frisket.ui.sheets.internal.sheets;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.sheets.GuestFiles;
import org.frisket.sheets.JobParts;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;
import org.frisket.sheets.SheetPart;
import org.frisket.ui.sheets.internal.sheets.surface.PartPicture;

/** Works out off the UI thread what the sheets of a job come to. A newer request calls off the one under way. */
final class ReadJob extends Job {

	/**
	 * What is asked for.
	 *
	 * @param host      a copy, which nobody else changes
	 * @param originals of what was copied, by their copies
	 * @param prepared  the host
	 * @param file      of the host; null if it has none
	 */
	record Request(org.frisket.model.Job host, Map<EObject, EObject> originals, PreparedJob prepared, Path file) {

		/** To be made on the UI thread. */
		static Request of(org.frisket.model.Job job, PreparedJob prepared, Path file) {
			EcoreUtil.Copier copier = new EcoreUtil.Copier();
			org.frisket.model.Job copy = (org.frisket.model.Job) copier.copy(job);
			copier.copyReferences();
			Map<EObject, EObject> originals = new HashMap<>();
			copier.forEach((original, made) -> originals.put(made, original));
			return new Request(copy, originals, prepared, file);
		}
	}

	private final Display display;
	private final Consumer<Reading> client;
	private final AtomicReference<Request> latest = new AtomicReference<>();
	private JobPreparer preparer;
	/** Pictures made before, by what they were made of. */
	private Map<PartKey, Drawn> drawn = Map.of();

	private record Drawn(SheetPart part, PartPicture picture) {

		boolean isOf(SheetPart other) {
			return part.room().equals(other.room()) && part.elements().equals(other.elements());
		}
	}

	/** @param client told on the UI thread of the newest request only */
	ReadJob(Display display, Consumer<Reading> client) {
		super(Messages.ReadJob_name);
		this.display = display;
		this.client = client;
		setSystem(true);
		setPriority(SHORT);
	}

	/** @param request null calls off what is under way */
	void request(Request request) {
		latest.set(request);
		cancel();
		if (request != null) {
			schedule();
		}
	}

	@Override
	protected IStatus run(IProgressMonitor progress) {
		Request request = latest.get();
		if (request == null) {
			return Status.CANCEL_STATUS;
		}
		try {
			Reading reading = read(request, progress::isCanceled);
			if (!display.isDisposed()) {
				display.asyncExec(() -> {
					if (latest.get() == request) {
						client.accept(reading);
					}
				});
			}
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (RuntimeException | LinkageError e) {
			ILog.of(ReadJob.class).error(Messages.ReadJob_failed, e);
			return Status.OK_STATUS;
		}
	}

	private Reading read(Request request, Monitor monitor) {
		GuestFiles.Guests guests = GuestFiles.load(request.host(), request.file());
		Map<String, PreparedJob> jobs = guests.prepared(request.prepared(), preparer(), Tolerance.DEFAULT, monitor);
		List<LaidSheet> sheets = LaidSheets.of(request.host(), jobs, Tolerance.DEFAULT, monitor);
		Map<PartKey, Drawn> now = new HashMap<>();
		jobs.forEach((id, job) -> {
			draw(id, job, mark(request.host(), id), monitor, now);
		});
		drawn = now;
		Map<PartKey, PartPicture> pictures = new HashMap<>();
		now.forEach((key, each) -> pictures.put(key, each.picture()));
		return Reading.of(jobs, pictures, sheets, request.originals(),
				Unlaid.count(request.host(), jobs, Tolerance.DEFAULT, monitor), guests.problems());
	}

	/** What is written on parts: of a guest, its number. */
	private static String mark(org.frisket.model.Job host, String id) {
		return host.getGuests().stream().filter(guest -> id.equals(guest.getJob())).findFirst()
				.map(guest -> guest.getNumber() == null || guest.getNumber().isBlank() ? guest.getJob()
						: guest.getNumber())
				.orElse(""); //$NON-NLS-1$
	}

	/** Made on first use, off the UI thread: it is the first to touch the fonts. */
	private JobPreparer preparer() {
		if (preparer == null) {
			preparer = new JobPreparer(FontLibraries.installed());
		}
		return preparer;
	}

	private void draw(String id, PreparedJob job, String mark, Monitor monitor, Map<PartKey, Drawn> now) {
		for (boolean apart : new boolean[] { false, true }) {
			for (SheetPart part : JobParts.of(job, apart, Tolerance.DEFAULT, monitor)) {
				PartKey key = new PartKey(id, part.key());
				if (now.containsKey(key)) {
					continue;
				}
				monitor.check();
				Drawn before = drawn.get(key);
				now.put(key, before != null && before.isOf(part) && before.picture().mark().equals(mark) ? before
						: new Drawn(part, PartPicture.of(part, mark)));
			}
		}
	}
}
