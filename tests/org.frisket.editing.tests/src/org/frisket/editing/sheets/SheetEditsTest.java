package org.frisket.editing.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.frisket.editing.EditHistory;
import org.frisket.editing.JobFragment;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.elements.PasteElements;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Laying;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.junit.jupiter.api.Test;

/** Parts on sheets, moved about by hand. */
class SheetEditsTest {

	private final Job job = Jobs.create("job", "Gift tags");
	private final Element tag = Jobs.addOutline(Jobs.addLayer(job, "Card"), "M0 0h60v30h-60z");
	private final Sheet sheet = Jobs.addSheet(job, "card", 210, 297);
	private final Placement placement = Jobs.addPlacement(sheet, tag.getId(), 50, 40, 0);
	private final EditHistory history = new EditHistory();

	private String text() throws IOException {
		return new String(JobFile.toBytes(job), StandardCharsets.UTF_8);
	}

	@Test
	void partsAreMovedTurnedAndPinnedByName() {
		history.execute(new MovePlacements(List.of(placement), 5, -3));
		assertEquals("Move part", history.undoName().orElseThrow());
		history.execute(new TurnPlacements(List.of(placement), -90));
		history.execute(new PinPlacements(List.of(placement), true));
		assertEquals("Pin part", history.undoName().orElseThrow());
		assertEquals("55.0 37.0 270.0 true",
				placement.getX() + " " + placement.getY() + " " + placement.getTurn() + " " + placement.isPinned());
		assertFalse(new PinPlacements(List.of(placement), true).canApply());
		assertFalse(new TurnPlacements(List.of(placement), 720).canApply());
	}

	@Test
	void copiesGetTheLowestFreeNumber() {
		placement.setPinned(true);
		Jobs.addPlacement(sheet, tag.getId(), 50, 140, 0).setCopy(3);
		DuplicatePlacements duplicate = new DuplicatePlacements(sheet.getPlacements(), 10, 0);
		history.execute(duplicate);
		assertEquals(List.of(2, 4), duplicate.copies().stream().map(Placement::getCopy).toList());
		assertFalse(duplicate.copies().get(0).isPinned());
	}

	@Test
	void partsGoToSheetsOfTheSameStockOnly() {
		AddSheet like = AddSheet.like(sheet);
		history.execute(like);
		history.execute(new AddSheet(job, "film", null, 100, 100, 5, 2));
		Sheet film = job.getSheets().get(2);
		assertFalse(new MoveToSheet(List.of(placement), film, 0, 0).canApply());
		history.execute(new MoveToSheet(List.of(placement), like.sheet(), 1, 2));
		assertSame(like.sheet(), placement.eContainer());
		assertEquals(51, placement.getX());
		history.undo();
		assertSame(sheet, placement.eContainer());
		assertEquals(50, placement.getX());
	}

	@Test
	void layingAgainIsOneStepAndKeepsIdsOfSheetsThatStay() throws IOException {
		String before = text();
		Laying laying = FrisketFactory.INSTANCE.createLaying();
		laying.setGap(3);
		Sheet fresh = FrisketFactory.INSTANCE.createSheet();
		Jobs.addPlacement(fresh, tag.getId(), 1, 2, 90);
		Guest guest = FrisketFactory.INSTANCE.createGuest();
		guest.setJob("cards");
		history.execute(new LaySheets(job, List.of(fresh, sheet), List.of(guest), laying));
		assertEquals(List.of("s2", "s1"), job.getSheets().stream().map(Sheet::getId).toList());
		assertEquals(3, job.getLaying().getGap());
		assertEquals("cards", job.getGuests().get(0).getJob());
		history.undo();
		assertEquals(before, text());
		history.redo();
		assertEquals(2, job.getSheets().size());
	}

	@Test
	void aGuestThatGoesTakesItsPartsAlong() {
		Guest guest = FrisketFactory.INSTANCE.createGuest();
		guest.setJob("cards");
		guest.setTitle("Place cards");
		history.execute(ChangeGuests.invite(job, guest));
		assertFalse(ChangeGuests.invite(job, guest).canApply());
		Jobs.addPlacement(sheet, "e1", 10, 10, 0).setJob("cards");
		history.execute(ChangeGuests.dismiss(job, job.getGuests().get(0)));
		assertEquals(List.of(placement), sheet.getPlacements());
		history.undo();
		assertEquals(2, sheet.getPlacements().size());
	}

	/** A place on a sheet must not take a new element for the one it was made for. */
	@Test
	void noNewElementTakesThePlaceOfADeletedOne() {
		history.execute(new DeleteElements(List.of(tag)));
		assertEquals(1, sheet.getPlacements().size());
		Element other = Jobs.addOutline(job.getLayers().get(0), "M0 0h10v10h-10z");
		assertEquals("e2", other.getId());
		ForgetMissing forget = new ForgetMissing(List.of(placement));
		history.execute(forget);
		assertTrue(sheet.getPlacements().isEmpty());
	}

	@Test
	void copiedElementsAreOnNoSheet() throws IOException {
		Job fragment = JobFragment.read(JobFragment.write(List.of(tag))).orElseThrow();
		assertTrue(fragment.getSheets().isEmpty());
		PasteElements paste = new PasteElements(job, fragment, 5, 5);
		history.execute(paste);
		assertEquals(List.of(placement), sheet.getPlacements());
		assertEquals("e2", paste.pasted().get(0).getId());
	}
}
