package org.frisket.print.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Point;
import org.frisket.print.register.MeasuredLengths.Between;
import org.junit.jupiter.api.Test;

/** Places of marks from the lengths between them. */
class MeasuredLengthsTest {

	private static List<Between> all(List<Point> marks) {
		List<Between> lengths = new ArrayList<>();
		for (int i = 0; i < marks.size(); i++) {
			for (int j = i + 1; j < marks.size(); j++) {
				lengths.add(new Between(i, j, marks.get(i).distance(marks.get(j))));
			}
		}
		return lengths;
	}

	/** Whether the sheet was moved or turned cannot be told by lengths; all else is. */
	@Test
	void lengthsGiveTheSameFitAsPlaces() throws RegisterException {
		List<Point> designed = RegistrationTest.SHEET;
		List<Point> measured = RegistrationTest.MEASURED;
		MeasuredLengths found = MeasuredLengths.of(designed, all(measured));
		assertEquals(1, found.redundancy());
		assertEquals(0, found.rms(), 1e-9);
		assertEquals(designed.get(0), found.places().get(0));
		assertEquals(designed.get(0).y(), found.places().get(1).y(), 1e-9);
		for (FitKind kind : FitKind.values()) {
			Registration byPlaces = Registration.fit(kind, designed, measured);
			Registration byLengths = Registration.fit(kind, designed, found.places());
			assertEquals(byPlaces.rms(), byLengths.rms(), 1e-8);
			assertEquals(byPlaces.lie().scaleX(), byLengths.lie().scaleX(), 1e-9);
			assertEquals(byPlaces.lie().scaleY(), byLengths.lie().scaleY(), 1e-9);
			assertEquals(byPlaces.lie().skew(), byLengths.lie().skew(), 1e-9);
		}
	}

	@Test
	void anyMarksAreFoundFromTheirLengths() throws RegisterException {
		Random random = new Random(11);
		for (int round = 0; round < 300; round++) {
			List<Point> designed = new ArrayList<>();
			for (int i = 0; i < 3 + random.nextInt(4); i++) {
				designed.add(new Point(300 * random.nextDouble(), 200 * random.nextDouble()));
			}
			if (Marks.conditioning(designed) < 0.1) {
				continue;
			}
			List<Point> printed = designed.stream()
					.map(p -> new Point(p.x() * 1.01 + 0.004 * p.y() + random.nextDouble(), p.y() * 0.993)).toList();
			MeasuredLengths found = MeasuredLengths.of(designed, all(printed));
			for (int i = 0; i < printed.size(); i++) {
				for (int j = 0; j < i; j++) {
					assertEquals(printed.get(i).distance(printed.get(j)), found.places().get(i).distance(found.places().get(j)),
							1e-7);
				}
			}
		}
	}

	@Test
	void lengthsThatDisagreeAreSharedOut() throws RegisterException {
		List<Between> lengths = all(RegistrationTest.SHEET);
		lengths.set(1, new Between(0, 2, lengths.get(1).mm() + 2));
		MeasuredLengths found = MeasuredLengths.of(RegistrationTest.SHEET, lengths);
		assertTrue(found.rms() > 0.1 && found.rms() < 2, "rms " + found.rms());
		assertTrue(found.residuals().get(1) > 0.2);
		assertEquals("lengths-disagree", found.findings().get(0).id());
		assertTrue(found.findings().get(0).measured().orElseThrow() > 0.5);
		List<Between> slight = all(RegistrationTest.SHEET);
		slight.set(1, new Between(0, 2, slight.get(1).mm() + 0.3));
		assertEquals(List.of(), MeasuredLengths.of(RegistrationTest.SHEET, slight).findings());
		assertEquals(List.of(), MeasuredLengths.of(RegistrationTest.SHEET, slight.subList(0, 5)).findings());
	}

	private static void assertRefused(String part, List<Between> lengths) {
		String message = assertThrows(RegisterException.class, () -> MeasuredLengths.of(RegistrationTest.SHEET, lengths))
				.getMessage();
		assertTrue(message.contains(part), message);
	}

	@Test
	void lengthsThatHoldNothingAreRefused() throws RegisterException {
		List<Between> lengths = all(RegistrationTest.SHEET);
		assertRefused("need 5 lengths, not 4", lengths.subList(0, 4));
		List<Between> twice = new ArrayList<>(lengths);
		twice.add(new Between(2, 0, 5));
		assertRefused("1-3 is there twice", twice);
		List<Between> unknown = new ArrayList<>(lengths);
		unknown.add(new Between(0, 4, 5));
		assertRefused("1-5 is not one", unknown);
		List<Between> negative = new ArrayList<>(lengths);
		negative.set(0, new Between(0, 1, -3));
		assertRefused("cannot be -3 mm", negative);
		List<Point> five = new ArrayList<>(RegistrationTest.SHEET);
		five.add(new Point(150, 20));
		List<Between> loose = new ArrayList<>(lengths);
		loose.add(new Between(0, 4, 140));
		assertThrows(RegisterException.class, () -> MeasuredLengths.of(five, loose));
		List<Point> line = RegistrationTest.points(0, 0, 100, 0, 200, 0);
		assertThrows(RegisterException.class, () -> MeasuredLengths.of(line, all(line)));
	}
}
