package org.frisket.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.frisket.help.HelpPage.Block;
import org.frisket.help.HelpPage.Kind;
import org.frisket.help.HelpPage.Run;
import org.junit.jupiter.api.Test;

class HelpPagesTest {

	private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

	@Test
	void everyPageIsThereInEachLanguageAndSaysSomething() {
		for (Locale language : LANGUAGES) {
			HelpPages pages = HelpPages.in(language);
			assertEquals(HelpPages.IDS, pages.all().stream().map(HelpPage::id).toList());
			for (HelpPage page : pages.all()) {
				assertFalse(page.title().isBlank(), page.id());
				assertTrue(page.blocks().size() >= 4, page.id());
			}
		}
	}

	@Test
	void everyLinkLeadsToAPageAndEveryPageIsLedTo() {
		for (Locale language : LANGUAGES) {
			HelpPages pages = HelpPages.in(language);
			Set<String> reached = new HashSet<>(Set.of(HelpPages.FIRST));
			for (HelpPage page : pages.all()) {
				for (Block block : page.blocks()) {
					for (Run run : block.runs()) {
						if (run.isLink()) {
							assertTrue(pages.page(run.link()).isPresent(), page.id() + " to " + run.link());
							reached.add(run.link());
						}
					}
				}
			}
			assertEquals(Set.copyOf(HelpPages.IDS), reached);
		}
	}

	@Test
	void languagesSayTheSameInTheSameOrder() {
		for (String id : HelpPages.IDS) {
			assertEquals(outline(Locale.ENGLISH, id), outline(Locale.GERMAN, id), id);
		}
	}

	private static List<Object> outline(Locale language, String id) {
		return HelpPages.in(language).page(id).orElseThrow().blocks().stream()
				.<Object>map(block -> List.of(block.kind(), block.runs().stream().filter(Run::isLink).count())).toList();
	}

	@Test
	void safetyLeavesTheLastWordToMakerAndRules() {
		String first = HelpPages.in(Locale.ENGLISH).page("safety").orElseThrow().blocks().get(0).text();
		assertTrue(first.contains("manual of the maker") && first.contains("codes"), first);
	}

	@Test
	void unknownLanguageGetsEnglish() {
		assertEquals("Makeready", HelpPages.in(Locale.forLanguageTag("is")).page("makeready").orElseThrow().title());
		assertEquals("Zurichtung", HelpPages.in(Locale.forLanguageTag("de-AT")).page("makeready").orElseThrow().title());
	}

	@Test
	void linesThatGoOnBelongToTheirBlock() {
		HelpPage page = PageReader.read("x", "# Tag\n\nOne\ntwo\n\n## Head\n- a [b c](mats) d\n  e\n- f\n");
		assertEquals(new HelpPage("x", "Tag", List.of(
				new Block(Kind.PARAGRAPH, List.of(new Run("One two", ""))),
				new Block(Kind.HEADING, List.of(new Run("Head", ""))),
				new Block(Kind.ITEM, List.of(new Run("a ", ""), new Run("b c", "mats"), new Run(" d e", ""))),
				new Block(Kind.ITEM, List.of(new Run("f", ""))))), page);
	}
}
