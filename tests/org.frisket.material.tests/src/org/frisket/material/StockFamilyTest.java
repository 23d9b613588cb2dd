package org.frisket.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class StockFamilyTest {

	/** They are stored by name: a renamed one would lose a studio's stock. */
	@Test
	void namesStay() {
		assertEquals("[CARD, PAPER, LABEL, FILM, FABRIC, BOARD, FOAM, OTHER]",
				java.util.Arrays.toString(StockFamily.values()));
	}
}
