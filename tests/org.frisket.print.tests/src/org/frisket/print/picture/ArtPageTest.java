package org.frisket.print.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArtPageTest {

	@ParameterizedTest
	@CsvSource(nullValues = "none", value = { "none,1", "application/pdf,1", "application/pdf;page=2,2",
			"application/pdf; Page = \"12\",12", "application/pdf;page=0,1", "application/pdf;pages=3,1",
			"application/pdf;page=99999999999,1" })
	void mediaTypesNameThePage(String mediaType, int page) {
		assertEquals(page, ArtPage.ofMediaType(mediaType));
	}

	@ParameterizedTest
	@CsvSource(nullValues = "none", value = { "none,1", "tags.pdf,1", "tags.pdf#page=3,3", "tags.pdf#zoom=50&page=3,3",
			"tags.pdf#page=3&zoom=50,3", "tags.pdf#homepage=3,1", "tag#page=4.pdf,1" })
	void linksNameThePage(String link, int page) {
		assertEquals(page, ArtPage.ofLink(link));
	}

	@Test
	void whatIsWrittenIsRead() {
		for (int page : new int[] { 1, 2, 40 }) {
			assertEquals(page, ArtPage.ofMediaType(ArtPage.mediaType(PictureFormat.PDF, page)));
			String link = ArtPage.link("art/tags no#1.pdf", page);
			assertEquals(page, ArtPage.ofLink(link));
			assertEquals("art/tags no#1.pdf", ArtPage.fileOf(link));
		}
		assertEquals("application/pdf", ArtPage.mediaType(PictureFormat.PDF, 1));
	}
}
