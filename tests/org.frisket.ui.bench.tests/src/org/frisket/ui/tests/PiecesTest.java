package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.eclipse.draw2d.geometry.Rectangle;
import org.frisket.ui.bench.internal.canvas.Pieces;
import org.junit.jupiter.api.Test;

/** What of the canvas is painted anew. */
class PiecesTest {

	private final Pieces pieces = new Pieces();

	@Test
	void everythingAskedForIsInOneOfFewPieces() {
		Random random = new Random(7);
		for (int round = 0; round < 300; round++) {
			List<Rectangle> asked = new ArrayList<>();
			Rectangle box = new Rectangle();
			for (int i = random.nextInt(60); i >= 0; i--) {
				Rectangle each = new Rectangle(random.nextInt(2000), random.nextInt(1500), 1 + random.nextInt(300),
						1 + random.nextInt(random.nextBoolean() ? 3 : 300));
				box = asked.isEmpty() ? each.getCopy() : box.union(each);
				asked.add(each);
				pieces.add(each);
			}
			assertEquals(box, pieces.box());
			List<Rectangle> taken = pieces.take();
			assertTrue(taken.size() <= Pieces.MOST);
			for (Rectangle each : asked) {
				assertTrue(taken.stream().anyMatch(piece -> piece.contains(each)), each + " in " + taken);
			}
			assertTrue(pieces.take().isEmpty());
		}
	}

	@Test
	void lineAcrossAndBoxBesideItStayApart() {
		pieces.add(new Rectangle(500, 0, 1, 1000));
		pieces.add(new Rectangle(0, 400, 150, 100));
		assertEquals(2, pieces.take().size());
	}

	@Test
	void neighboursAreOne() {
		pieces.add(new Rectangle(0, 0, 30, 30));
		pieces.add(new Rectangle(400, 400, 1, 0));
		pieces.add(new Rectangle(31, 2, 30, 30));
		assertEquals(List.of(new Rectangle(0, 0, 61, 32)), pieces.take());
	}
}
