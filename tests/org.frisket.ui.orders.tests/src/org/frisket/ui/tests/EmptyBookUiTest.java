package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.widgets.Composite;
import org.junit.jupiter.api.Test;

/** An order book with nothing in it. */
class EmptyBookUiTest extends OpenBook {

	@Override
	protected boolean isFilled() {
		return false;
	}

	@Test
	void anEmptyBookOffersASampleStudio() throws Exception {
		assertTrue(book.isEmptyPageShown());
		Screen.keepScreen("order-book-empty");
		Composite pages = grid().table().getParent();
		press(pages, "Fill with a Sample Studio");
		Screen.waitUntil("it is filled", () -> numbers().size() == 12);
		assertEquals(12, elsewhere().list(100).size());
	}
}
