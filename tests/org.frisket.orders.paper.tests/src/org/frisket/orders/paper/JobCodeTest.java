package org.frisket.orders.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalLong;

import org.junit.jupiter.api.Test;

class JobCodeTest {

	@Test
	void textIsReadBackAsTheNumber() {
		for (long number : new long[] { 1, 10247, 999_999_999_999_999_999L }) {
			assertEquals(OptionalLong.of(number), JobCode.number(JobCode.text(Long.toString(number))));
		}
		assertEquals("frisket:job:10247", JobCode.text("10247"));
		assertEquals(OptionalLong.of(10247), JobCode.number("frisket:job:10247\n"), "as scanners end what they type");
	}

	@Test
	void whatNoOrderBookGivesHasNoCode() {
		for (String number : new String[] { null, "", "0", "007", "-1", "2026-117", "1234567890123456789" }) {
			assertEquals("", JobCode.text(number));
		}
		for (String text : new String[] { "", "10247", "frisket:job:", "frisket:job:0", "frisket:job:1x", "http://job:1" }) {
			assertEquals(OptionalLong.empty(), JobCode.number(text), text);
		}
	}

	@Test
	void darkModulesFillTheirSquareFromCornerToCorner() {
		var modules = JobCode.modules("frisket:job:10247", 10, 20, 30);
		assertEquals(10, modules.bounds().minX(), 1e-9);
		assertEquals(20, modules.bounds().minY(), 1e-9);
		assertEquals(40, modules.bounds().maxX(), 1e-9);
		assertEquals(50, modules.bounds().maxY(), 1e-9);
		assertTrue(JobCode.size("frisket:job:10247") <= 29, "a code of few modules is read from further away");
	}
}
