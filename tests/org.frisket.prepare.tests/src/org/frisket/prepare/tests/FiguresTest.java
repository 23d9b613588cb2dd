package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

import org.frisket.prepare.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {

	private static Properties texts(String file) throws IOException {
		Properties texts = new Properties();
		try (InputStream in = Figures.class.getResourceAsStream(file)) {
			texts.load(in);
		}
		return texts;
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', value = { "1.25; 1; 1.2 mm; 1,2 mm", "0.5; 2; 0.5 mm; 0,5 mm", "12; 2; 12 mm; 12 mm",
			"1234.5; 1; 1234.5 mm; 1234,5 mm", "-0.04; 1; 0 mm; 0 mm" })
	void theDecimalSignIsThatOfTheSentence(double mm, int decimals, String english, String german) throws IOException {
		assertEquals(english, Figures.length(mm, decimals, texts("messages.properties").getProperty("Figures_point")));
		assertEquals(german, Figures.length(mm, decimals, texts("messages_de.properties").getProperty("Figures_point")));
	}

	@Test
	void numbersHaveNoUnit() {
		assertFalse(Figures.number(71.75, 1).contains("mm"));
		assertEquals("72", Figures.number(72, 1));
	}
}
