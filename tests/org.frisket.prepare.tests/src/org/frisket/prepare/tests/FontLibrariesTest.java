package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.typography.index.FontIndex;
import org.frisket.typography.index.FontIndexer;
import org.frisket.typography.index.FontQuery;
import org.frisket.typography.source.FontSource;
import org.frisket.typography.source.UnknownFontException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Sources of fonts that other bundles contribute. */
class FontLibrariesTest {

	@BeforeEach
	void needsARegistry() {
		assumeTrue(!FontLibraries.POINT.contributions().isEmpty(), "runs without a registry");
	}

	@Test
	void sourcesAreAskedInTheirOrder() {
		assertEquals(
				List.of("org.frisket.prepare.tests.fonts", "org.frisket.prepare.tests.failing",
						"org.frisket.prepare.tests.none", "org.frisket.studio.fonts", "org.frisket.typography.embedded",
						"org.frisket.typography.system"),
				FontLibraries.installed().sources().stream().map(FontSource::id).toList());
	}

	@Test
	void contributedFontIsFoundAndTheBuiltInOnesStill() throws Exception {
		assertEquals("Liberation Sans", FontLibraries.installed().find("Quayside").family());
		assertEquals("Liberation Mono", FontLibraries.installed().find("Liberation Mono").family());
		assertThrows(UnknownFontException.class, () -> FontLibraries.installed().find("Nowhere At All"));
	}

	@Test
	void failingSourcesAreNamedAndCountAsEmpty() {
		for (FontSource source : FontLibraries.installed().sources().subList(1, 3)) {
			assertEquals(List.of(), source.fonts(Monitor.NONE));
			assertEquals(1, source.broken(Monitor.NONE).size());
		}
		List<String> reasons = FontLibraries.failures().stream().map(ContributionException::getMessage).toList();
		assertTrue(reasons.contains("“org.frisket.prepare.tests.failing” of bundle org.frisket.prepare.tests failed: "
				+ "the shelf fell down"), reasons.toString());
		assertTrue(reasons.stream().anyMatch(r -> r.contains("org.frisket.prepare.tests.none")));
	}

	@Test
	void allSourcesAreIndexed() {
		FontIndex index = FontIndexer.withoutMemory()
				.index(FontLibraries.installed().sources().subList(0, 5), Monitor.NONE);
		assertEquals(List.of("Liberation Sans"), index.search(FontQuery.named("quay")).stream()
				.map(f -> f.face().names().family()).toList(), "found by the name its source gives it");
		assertEquals(25, index.fonts().size());
		assertEquals(2, index.broken().size());
	}
}
