package org.frisket.orders.work.again;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.frisket.material.Stock;
import org.frisket.material.desk.DeskState;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.Run;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobHome;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Severity;
import org.frisket.prepare.pictures.PictureSource;

/** The copy of a job that is made again, and what had to be left out of it. The original is not touched. */
final class Copy {

	private static final int DECIMALS = 3;

	private final Job job;
	private final List<Note> notes = new ArrayList<>();

	Copy(Job original, Wish wish) {
		job = EcoreUtil.copy(original);
		int before = original.getQuantity();
		job.setDue(wish.due().orElse(null));
		job.setQuantity(wish.quantity().orElse(before));
		job.setStage(wish.stage());
		sheets(before);
		pictures(original);
	}

	Job job() {
		return job;
	}

	List<Note> notes() {
		return notes;
	}

	/** Sheets hold as many copies as were laid; parts of other jobs and leftovers are not there a second time. */
	private void sheets(int before) {
		if (job.getSheets().isEmpty()) {
			return;
		}
		if (job.getQuantity() != before) {
			job.getSheets().clear();
			job.getGuests().clear();
			notes.add(new Note(Severity.CAUTION, Messages.Copy_sheets, NLS.bind(Messages.Copy_copies, before),
					NLS.bind(Messages.Copy_copies, job.getQuantity()), Messages.Copy_layCure));
			return;
		}
		if (!job.getGuests().isEmpty()) {
			job.getSheets().forEach(sheet -> sheet.getPlacements().removeIf(placement -> placement.getJob() != null));
			job.getSheets().removeIf(sheet -> sheet.getPlacements().isEmpty());
			notes.add(new Note(Severity.NOTE, Messages.Copy_sheets, NLS.bind(Messages.Copy_guests, job.getGuests().size()),
					Messages.Copy_alone, Messages.Copy_guestsCure));
			job.getGuests().clear();
		}
		long leftovers = job.getSheets().stream().filter(sheet -> sheet.getLeftover() != null).count();
		if (leftovers > 0) {
			job.getSheets().forEach(sheet -> sheet.setLeftover(null));
			notes.add(new Note(Severity.CAUTION, Messages.Copy_sheets, NLS.bind(Messages.Copy_leftovers, leftovers),
					Messages.Copy_usedUp, Messages.Copy_leftoversCure));
		}
	}

	/** @param original where the files that pictures refer to are looked for */
	private void pictures(Job original) {
		JobHome.of(original).ifPresent(home -> JobHome.set(job, home));
		for (Element element : Jobs.elements(job)) {
			if (element instanceof Picture picture) {
				PictureSource source = PictureSource.of(picture);
				if (source.bytes() == null) {
					notes.add(new Note(Severity.BLOCKING, NLS.bind(Messages.Copy_picture, name(element)),
							source.isLinked() ? source.link() : Messages.Copy_pictureWas, Messages.Copy_pictureMissing,
							Messages.Copy_pictureCure));
				}
			}
		}
	}

	private static String name(Element element) {
		return element.getName() == null || element.getName().isBlank() ? element.getId() : element.getName();
	}

	private record Work(OperationKind kind, String stock) {
	}

	/**
	 * Notes what worked, and has operations that left their tool open ask for the one that did the work: another may be the
	 * usual one by now.
	 */
	void prove(List<Run> runs, DeskState desk) {
		Set<Work> told = new HashSet<>();
		for (Layer layer : job.getLayers()) {
			String stock = layer.getStock() == null ? "" : layer.getStock();
			for (Element element : layer.getElements()) {
				for (Operation operation : element.getOperations()) {
					prove(operation, stock, runs, desk, told);
				}
			}
		}
	}

	private void prove(Operation operation, String stock, List<Run> runs, DeskState desk, Set<Work> told) {
		Optional<Run> best = runs.stream().filter(run -> run.verdict().isGood())
				.filter(run -> run.setup().operation() == operation.getKind() && run.stock().stock().equals(stock))
				.max(Comparator.comparing(Run::at).thenComparing(Run::id));
		best.ifPresent(run -> {
			boolean there = desk.tools().stream().anyMatch(tool -> tool.id().equals(run.setup().tool()));
			if (operation.getTool() == null && there) {
				operation.setTool(run.setup().tool());
			}
			if (told.add(new Work(operation.getKind(), stock))) {
				notes.add(proven(run, stock, desk));
			}
		});
	}

	private static Note proven(Run run, String stock, DeskState desk) {
		Optional<Machine> machine = desk.machine(run.setup().machine());
		String settings = NLS.bind(Messages.Copy_settings, new Object[] { Figures.length(run.settings().exposure(), 2),
				steps(run.settings().pressure(), machine.map(each -> each.pressure().unit()).orElse("")),
				steps(run.settings().speed(), machine.map(each -> each.speed().unit()).orElse("")), run.settings().passes(),
				desk.tool(run.setup().tool()).map(Tool::name).orElse(run.setup().tool()),
				machine.map(Machine::name).orElse(run.setup().machine()) });
		return new Note(Severity.NOTE,
				NLS.bind(Messages.Copy_ranWell, OperationWords.of(run.setup().operation()),
						desk.stock(stock).map(Stock::name).orElse(stock)),
				settings, "", Messages.Copy_ranWellCure);
	}

	private static String steps(double value, String unit) {
		return unit.isBlank() ? Figures.number(value, DECIMALS) : Figures.number(value, DECIMALS) + ' ' + unit;
	}
}
