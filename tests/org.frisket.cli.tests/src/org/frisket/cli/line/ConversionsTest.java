package org.frisket.cli.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ConversionsTest {

	@Test
	void lineEndsAndBackslashesAreTold() {
		assertEquals("a\nb", Conversions.lines("a\\nb"));
		assertEquals("a\\nb", Conversions.lines("a\\\\nb"));
		assertEquals("C:\\dir", Conversions.lines("C:\\dir"));
		assertEquals("end\\", Conversions.lines("end\\"));
	}
}
