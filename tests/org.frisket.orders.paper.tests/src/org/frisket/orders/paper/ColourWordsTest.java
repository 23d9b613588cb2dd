package org.frisket.orders.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;

/** Colours have the words that people would use; the samples are of our own cards. */
class ColourWordsTest {

	@Test
	void colourIsCalledWhatItLooksLike() {
		Map.of("#B0452f", "red", "#2f5fa6", "blue", "#f8f8f5", "white", "#232323", "dark grey", "#000000", "black", "#7a4f2e",
				"brown", "#3f8a4c", "green", "#f3e7c4", "light orange", "#1f2f55", "dark blue", "#8d8f91", "grey")
				.forEach((code, words) -> assertEquals(Optional.of(words), ColourWords.of(code), code));
		for (String none : new String[] { "", "red", "#12345", "#1234567", "#12345g" }) {
			assertEquals(Optional.empty(), ColourWords.of(none), none);
		}
	}
}
