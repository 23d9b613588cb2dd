package org.frisket.editing;

import static org.frisket.editing.RandomEdits.anyOf;
import static org.frisket.editing.RandomEdits.maker;

import java.util.List;

import org.frisket.editing.sheets.AddSheet;
import org.frisket.editing.sheets.ChangeGuests;
import org.frisket.editing.sheets.ChangeSheet;
import org.frisket.editing.sheets.DuplicatePlacements;
import org.frisket.editing.sheets.ForgetMissing;
import org.frisket.editing.sheets.LaySheets;
import org.frisket.editing.sheets.MovePlacements;
import org.frisket.editing.sheets.MoveToSheet;
import org.frisket.editing.sheets.PinPlacements;
import org.frisket.editing.sheets.RemovePlacements;
import org.frisket.editing.sheets.RemoveSheet;
import org.frisket.editing.sheets.SetMarks;
import org.frisket.editing.sheets.SetMeasures;
import org.frisket.editing.sheets.TurnPlacements;
import org.frisket.model.Jobs;
import org.frisket.model.SheetFit;

/** Edits of sheets and what lies on them. */
final class SheetMakers {

	private SheetMakers() {
	}

	static void list() {
		maker(AddSheet.class, anyOf(
				(job, c) -> new AddSheet(job, c.of("card", null, null, null), c.of("#1d6f78", null, null, null), c.length(), c.length(), c.length(), c.length()),
				(job, c) -> c.sheet(job, AddSheet::like)));
		maker(ChangeGuests.class, anyOf((job, c) -> ChangeGuests.invite(job, c.guest()),
				(job, c) -> job.getGuests().isEmpty() ? null : ChangeGuests.dismiss(job, c.of(job.getGuests()))));
		maker(ChangeSheet.class, anyOf((job, c) -> c.sheet(job, s -> ChangeSheet.name(s, c.word())),
				(job, c) -> c.sheet(job, s -> ChangeSheet.size(s, c.length(), c.length())),
				(job, c) -> c.sheet(job, s -> ChangeSheet.margin(s, c.length())),
				(job, c) -> c.sheet(job, s -> ChangeSheet.gap(s, c.length())),
				(job, c) -> c.sheet(job, s -> ChangeSheet.leftover(s, c.of("leftover-1", null))),
				(job, c) -> c.sheet(job, s -> ChangeSheet.fit(s, c.of(SheetFit.values()))),
				(job, c) -> c.sheet(job, s -> ChangeSheet.printer(s, c.of("Front desk", null))),
				(job, c) -> c.sheet(job, s -> ChangeSheet.printMargin(s, c.length()))));
		maker(DuplicatePlacements.class, (job, c) -> new DuplicatePlacements(c.placements(job), c.signed(), c.signed()));
		maker(ForgetMissing.class, (job, c) -> new ForgetMissing(c.placements(job).stream()
				.filter(each -> Jobs.element(job, String.valueOf(each.getPart())).isEmpty()).toList()));
		maker(LaySheets.class, (job, c) -> new LaySheets(job, c.newSheets(job), c.coin() ? List.of() : List.of(c.guest()),
				c.laying()));
		maker(MovePlacements.class, (job, c) -> new MovePlacements(c.placements(job), c.signed(), c.signed()));
		maker(MoveToSheet.class,
				(job, c) -> c.sheet(job, s -> new MoveToSheet(c.placements(job), s, c.signed(), c.signed())));
		maker(PinPlacements.class, (job, c) -> new PinPlacements(c.placements(job), c.coin()));
		maker(RemovePlacements.class, (job, c) -> new RemovePlacements(c.placements(job)));
		maker(RemoveSheet.class, (job, c) -> c.sheet(job, RemoveSheet::new));
		maker(TurnPlacements.class, (job, c) -> new TurnPlacements(c.placements(job), c.signed()));
		maker(SetMarks.class, (job, c) -> c.sheet(job, s -> new SetMarks(s, c.marks())));
		maker(SetMeasures.class, (job, c) -> c.sheet(job, s -> new SetMeasures(s, c.measured(s))));
	}
}
