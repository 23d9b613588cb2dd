package org.frisket.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;

class HelpIndexTest {

	private final HelpIndex english = new HelpIndex(HelpPages.in(Locale.ENGLISH));
	private final HelpIndex german = new HelpIndex(HelpPages.in(Locale.GERMAN));

	private static List<String> ids(List<HelpIndex.Hit> hits) {
		return hits.stream().map(hit -> hit.page().id()).toList();
	}

	@Test
	void pageWithTheWordInItsTitleComesFirst() {
		assertEquals("makeready", ids(english.search("makeready")).get(0));
		assertEquals("export", ids(english.search("export")).get(0));
		assertEquals("keys", ids(english.search("keys")).get(0));
		assertEquals("makeready", ids(german.search("zurichtung")).get(0));
	}

	@Test
	void beginningsOfWordsAreEnough() {
		assertEquals(List.of("safety"), ids(english.search("poison")));
		assertTrue(ids(english.search("prop")).contains("properties"));
		assertTrue(ids(german.search("fahrrad")).isEmpty());
	}

	@Test
	void allWordsMustBeThereWhereverTheyStand() {
		assertEquals(List.of("safety", "start"), ids(english.search("fumes machine")));
		assertTrue(english.search("fumes caret").isEmpty());
		assertTrue(english.search("harbour").isEmpty());
	}

	@Test
	void lettersLargeOrSmallWithOrWithoutMarksAreTheSame() {
		assertEquals(ids(german.search("Größe")), ids(german.search("GROSSE")));
		assertFalse(german.search("grosse").isEmpty());
		assertEquals(ids(german.search("dämpfe")), ids(german.search("dampfe")));
	}

	@Test
	void wholeWordsCountMoreThanBeginnings() {
		double whole = english.search("mats").get(0).score();
		double beginning = english.search("mat").stream().filter(hit -> hit.page().id().equals("mats")).findFirst()
				.orElseThrow().score();
		assertEquals("mats", ids(english.search("mats")).get(0));
		assertTrue(whole > 0 && beginning > 0);
		assertTrue(english.search("wording").get(0).score() > english.search("wordin").get(0).score());
	}

	@Test
	void nothingAskedFindsNothing() {
		assertTrue(english.search("").isEmpty());
		assertTrue(english.search(" \t.,;- ").isEmpty());
	}

	@Test
	void hitTellsWhereOnThePageAndSaysIt() {
		HelpIndex.Hit hit = english.search("chlorine").get(0);
		assertEquals("safety", hit.page().id());
		assertTrue(hit.page().blocks().get(hit.block()).text().contains("chlorine"));
		assertTrue(hit.excerpt().startsWith("Cut with heat only"), hit.excerpt());
		assertTrue(hit.excerpt().length() <= 145);
	}

	@Test
	void sameQuestionGetsTheSameAnswer() {
		assertEquals(english.search("the file"), english.search("the file"));
		assertEquals(english.search("the file"), new HelpIndex(HelpPages.in(Locale.ENGLISH)).search("file the file"));
	}

	@Test
	void absurdQuestionsAreAnsweredToo() {
		assertTrue(english.search("a".repeat(100_000)).isEmpty());
		assertTrue(english.search("a ".repeat(10_000)).size() > 1);
		assertTrue(english.search(".*[(\\").isEmpty());
	}
}
