package org.frisket.ui.sheets.internal.sheets;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.frisket.editing.Edit;
import org.frisket.editing.EditGroup;
import org.frisket.editing.sheets.AddSheet;
import org.frisket.editing.sheets.ChangeGuests;
import org.frisket.editing.sheets.DuplicatePlacements;
import org.frisket.editing.sheets.ForgetMissing;
import org.frisket.editing.sheets.LaySheets;
import org.frisket.editing.sheets.MovePlacements;
import org.frisket.editing.sheets.MoveToSheet;
import org.frisket.editing.sheets.PinPlacements;
import org.frisket.editing.sheets.RemovePlacements;
import org.frisket.editing.sheets.RemoveSheet;
import org.frisket.editing.sheets.TurnPlacements;
import org.frisket.geometry.Bounds;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.model.UnreadableJobException;
import org.frisket.sheets.GuestFiles;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.imposing.LayingChoices;
import org.frisket.sheets.imposing.SheetPlan;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.sheets.internal.sheets.surface.Board;

/** What can be done with sheets and the parts on them; each of it one step of undo. */
final class SheetActions {

	/** In mm: where a copy comes to lie beside the one it was made of. */
	private static final double BESIDE = 5;

	private final SheetsView view;

	SheetActions(SheetsView view) {
		this.view = view;
	}

	private Job job() {
		return view.front() == null ? null : view.front().job();
	}

	private List<Placement> selection() {
		return view.front() == null ? List.of() : view.surface().selection();
	}

	/** One that would change nothing is passed over. */
	private void execute(Edit edit) {
		view.front().edits().execute(edit);
	}

	/** Makes a layout that of the job. */
	void lay(JobOnBench bench, LayingChoices choices, SheetPlan plan) {
		bench.edits().execute(
				new LaySheets(bench.job(), plan.toSheets(), bench.job().getGuests(), choices.toLaying()));
		view.surface().fitSoon();
	}

	/** Brings copies to other places, on their sheets or on others. */
	void move(List<Board.Move> moves) {
		List<Edit> edits = new ArrayList<>();
		for (List<Board.Move> together : Board.Move.together(moves)) {
			List<Placement> moved = together.stream().map(Board.Move::placement).toList();
			Board.Move first = together.get(0);
			edits.add(first.staysOnSheet() ? new MovePlacements(moved, first.dx(), first.dy())
					: new MoveToSheet(moved, first.sheet(), first.dx(), first.dy()));
		}
		execute(edits.size() == 1 ? edits.get(0) : new EditGroup(edits.get(0).name(), edits));
		view.surface().select(moves.stream().map(Board.Move::placement).toList());
	}

	/** Moves the selected copies on their sheets. In mm. */
	void nudge(double right, double down) {
		execute(new MovePlacements(selection(), right, down));
	}

	/** Turns the selected copies, each about its centre. @param degrees clockwise as seen */
	void turn(double degrees) {
		turn(selection(), degrees);
	}

	void turn(List<Placement> turned, double degrees) {
		execute(new TurnPlacements(turned, degrees));
	}

	/** Pins the selected copies, or frees them if all of them are pinned. */
	void pin() {
		List<Placement> chosen = selection();
		execute(new PinPlacements(chosen, !chosen.stream().allMatch(Placement::isPinned)));
	}

	/** One more copy of each selected one, beside it. */
	void duplicate() {
		DuplicatePlacements edit = new DuplicatePlacements(selection(), BESIDE, BESIDE);
		execute(edit);
		view.surface().select(edit.copies());
	}

	/** Takes the selected copies off their sheets. */
	void delete() {
		execute(new RemovePlacements(selection()));
	}

	/** Takes copies whose part is no more off their sheets. */
	void forget() {
		execute(new ForgetMissing(view.reading().missing()));
	}

	/** One more sheet like the current one, with nothing on it. */
	void addSheet() {
		Sheet like = view.surface().current();
		if (like != null) {
			execute(AddSheet.like(like));
			view.surface().fitSoon();
		}
	}

	/** Takes the current sheet away, with all that lies on it. */
	void removeSheet() {
		Sheet gone = view.surface().current();
		if (gone != null) {
			execute(new RemoveSheet(gone));
		}
	}

	/** Asks for the file of another job, whose parts are laid with those of this one. */
	void takeAlong() {
		if (job() == null) {
			return;
		}
		if (view.file() == null) {
			// where the guest is is written as seen from there
			view.bar().say(Messages.SheetActions_saveFirst);
			return;
		}
		FileDialog dialog = new FileDialog(view.getSite().getShell(), SWT.OPEN);
		dialog.setText(Messages.SheetActions_takeAlong);
		dialog.setFilterExtensions(new String[] { '*' + JobFile.ENDING });
		String chosen = dialog.open();
		if (chosen != null) {
			takeAlong(Path.of(chosen));
		}
	}

	/** Takes a job along; a message says why if it cannot be read. */
	void takeAlong(Path file) {
		try {
			Job other = JobFile.load(file);
			Guest guest = GuestFiles.guest(job(), job().getGuests(), view.file(), other, file);
			execute(ChangeGuests.invite(job(), guest));
		} catch (UnreadableJobException e) {
			MessageDialog.openError(view.getSite().getShell(), Messages.SheetActions_takeAlong, e.getMessage());
		}
	}

	/** Shows the largest free piece of the current sheet, and keeps it if it is seen already. */
	void keepOffcut() {
		Sheet sheet = view.surface().current();
		Optional<LaidSheet> laid = sheet == null ? Optional.empty() : view.reading().of(sheet);
		if (laid.isPresent()) {
			view.offcut().seek(sheet, laid.get(), found -> keep(sheet, found));
		}
	}

	private void keep(Sheet sheet, Optional<Bounds> found) {
		if (found.isEmpty()) {
			view.bar().say(Messages.SheetActions_noOffcut);
			return;
		}
		Bounds piece = found.get();
		if (MessageDialog.openQuestion(view.getSite().getShell(), Messages.SheetActions_offcut,
				NLS.bind(Messages.SheetActions_offcutAsk, LengthText.size(piece.width(), piece.height())))) {
			KeptOffcut.keep(sheet, piece, view.bar()::say);
		}
		view.surface().setOffcutShown(false);
	}

	/** Takes the leftover the current sheet is cut from away. Laying alone does not: until it is cut, it is still there. */
	void leftoverUsed() {
		Sheet sheet = view.surface().current();
		if (sheet == null) {
			return;
		}
		String leftover = sheet.getLeftover();
		if (leftover == null) {
			view.bar().say(Messages.SheetActions_noLeftover);
		} else if (MessageDialog.openQuestion(view.getSite().getShell(), Messages.SheetActions_leftover,
				NLS.bind(Messages.SheetActions_leftoverAsk, leftover))) {
			KeptOffcut.use(leftover, view.bar()::say);
		}
	}
}
