package org.frisket.print.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a printer does to every sheet. */
class PrinterProfileTest {

	private static final LocalDate DAY = LocalDate.of(2026, 11, 30);

	@TempDir
	private Path folder;

	/** Stretches by 1.003 along x and 0.998 along y, leans y by 2 mrad; the sheet was laid down turned and moved. */
	private static List<Point> printed() {
		Transform printer = new Transform(1.003, 0, 0.998 * Math.sin(0.002), 0.998 * Math.cos(0.002), 0, 0);
		Transform laid = Transform.rotation(0.3).then(Transform.translation(-7, 22));
		return RegistrationTest.SHEET.stream().map(printer::apply).map(laid::apply).toList();
	}

	@Test
	void aSheetTellsScaleAndSkewWhereverItLies() throws RegisterException {
		Registration fit = Registration.fit(FitKind.AFFINE, RegistrationTest.SHEET, printed());
		PrinterProfile profile = PrinterProfile.of("Front desk", fit, DAY);
		assertEquals(1.003, profile.scaleX(), 1e-12);
		assertEquals(0.998, profile.scaleY(), 1e-12);
		assertEquals(0.002, profile.skew(), 1e-12);
		assertEquals(4, profile.marks());
	}

	@Test
	void printedArtOfTheProfileComesOutAsDesigned() throws RegisterException {
		PrinterProfile profile = PrinterProfile.of("Front desk",
				Registration.fit(FitKind.AFFINE, RegistrationTest.SHEET, printed()), DAY);
		Point corner = new Point(10, 10);
		Transform printer = profile.forCuts(corner);
		for (Point p : RegistrationTest.SHEET) {
			assertEquals(0, printer.apply(profile.forArt(corner).apply(p)).distance(p), 1e-12);
		}
		assertEquals(corner, profile.forCuts(corner).apply(corner));
		assertEquals(10 + 280 * 1.003, printer.apply(new Point(290, 10)).x(), 1e-9);
	}

	@Test
	void whatNoPrinterDoesIsRefused() throws RegisterException {
		assertThrows(IllegalArgumentException.class, () -> new PrinterProfile("a;b", 1, 1, 0, DAY, 4));
		assertThrows(IllegalArgumentException.class, () -> new PrinterProfile(" ", 1, 1, 0, DAY, 4));
		assertThrows(IllegalArgumentException.class, () -> new PrinterProfile("Desk", 25.4, 1, 0, DAY, 4));
		assertThrows(IllegalArgumentException.class, () -> new PrinterProfile("Desk", 1, 1, 0.1, DAY, 4));
		Registration similar = Registration.fit(FitKind.SIMILARITY, RegistrationTest.SHEET, printed());
		assertThrows(RegisterException.class, () -> PrinterProfile.of("Desk", similar, DAY));
		List<Point> doubled = RegistrationTest.SHEET.stream().map(p -> p.times(2)).toList();
		Registration twice = Registration.fit(FitKind.AFFINE, RegistrationTest.SHEET, doubled);
		assertTrue(assertThrows(RegisterException.class, () -> PrinterProfile.of("Desk", twice, DAY)).getMessage()
				.startsWith("No printer"));
	}

	@Test
	void theStudioKeepsThemByName() throws IOException {
		StudioFolder studio = new StudioFolder(folder);
		PrinterProfiles profiles = new PrinterProfiles(studio.preferences());
		assertTrue(profiles.all().isEmpty());
		PrinterProfile front = new PrinterProfile("Front desk", 1.003, 0.998, 0.002, DAY, 4);
		profiles.keep(front);
		profiles.keep(new PrinterProfile("Back room", 1, 1.001, 0, DAY.minusDays(3), 6));
		assertEquals(front, new PrinterProfiles(studio.preferences()).named(" front DESK ").orElseThrow());
		profiles.keep(new PrinterProfile("FRONT DESK", 1.004, 0.998, 0.002, DAY, 8));
		assertEquals(Set.of("Back room", "FRONT DESK"), profiles.all().keySet());
		assertThrows(IllegalArgumentException.class, () -> profiles.rename("Back room", "front desk"));
		assertThrows(IllegalArgumentException.class, () -> profiles.rename("Back room", ";"));
		profiles.rename("front desk", "Front Desk");
		profiles.rename("gone", "Anything");
		assertEquals(Set.of("Back room", "Front Desk"), profiles.all().keySet());
		assertEquals(1.004, profiles.named("Front Desk").orElseThrow().scaleX());
		profiles.rename("Back room", "Loft");
		profiles.rename("Loft", "Back room");
		assertTrue(profiles.drop("Back room"));
		assertFalse(profiles.drop("Back room"));
		studio.preferences().put("print.printers", "Front desk;1.003");
		assertTrue(assertThrows(IOException.class, profiles::all).getMessage().contains("Front desk;1.003"));
	}
}
