package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

import org.frisket.model.Jobs;
import org.frisket.prepare.letterforms.FeatureNames;
import org.frisket.prepare.letterforms.FontFinder;
import org.frisket.prepare.letterforms.Letterforms;
import org.frisket.typography.FeatureList;
import org.frisket.typography.FontFace;
import org.frisket.typography.face.Axis;
import org.frisket.typography.face.AxisSettings;
import org.frisket.typography.face.NamedInstance;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.Test;

/** What can be chosen of the letters of a font. */
class LetterformsTest {

	private static final Axis WEIGHT = new Axis("wght", "Weight", 100, 400, 900, false, List.of());
	private static final Axis WIDTH = new Axis("wdth", "Width", 75, 100, 100, false, List.of());
	private static final NamedInstance BOLD = new NamedInstance("Bold", "",
			new AxisSettings(Map.of("wght", 700.0, "wdth", 100.0)));
	private static final NamedInstance NARROW = new NamedInstance("Narrow Bold", "",
			new AxisSettings(Map.of("wght", 700.0, "wdth", 75.0)));
	private final Letterforms forms = new Letterforms(List.of("smcp"), Map.of(), List.of(WEIGHT, WIDTH), List.of(BOLD, NARROW),
			AxisSettings.NONE);

	@Test
	void namesAreThoseOfTheOpenTypeSpecification() {
		FeatureNames english = FeatureNames.in(Locale.ENGLISH);
		// OpenType specification, "Registered features": friendly names
		assertEquals("Small Capitals", english.of("smcp"));
		assertEquals("Oldstyle Figures", english.of("onum"));
		assertEquals("Stylistic Set 3", english.of("ss03"));
		assertEquals("Character Variant 12", english.of("cv12"));
		assertEquals("xyzw", english.of("xyzw"));
		FeatureNames german = FeatureNames.in(Locale.GERMAN);
		assertEquals("Kapit\u00e4lchen", german.of("smcp"));
		assertEquals("Stilsatz 3", german.of("ss03"));
		assertEquals("Small Capitals", FeatureNames.in(Locale.FRENCH).of("smcp"));
	}

	@Test
	void featuresThatAScriptNeedsAreNotForChoice() {
		assertEquals(List.of("calt", "smcp", "ss01"),
				FeatureNames.chosenByEye(List.of("calt", "ccmp", "init", "kern", "liga", "mark", "rlig", "smcp", "ss01", "ss")));
	}

	@Test
	void axisAsTheFontHasItIsNotSpokenOf() {
		assertEquals(400, forms.value(WEIGHT, AxisSettings.NONE));
		AxisSettings heavy = forms.with(AxisSettings.NONE, WEIGHT, 720);
		assertEquals("wght=720", heavy.toString());
		assertEquals(720, forms.value(WEIGHT, heavy));
		assertEquals("wght=900", forms.with(heavy, WEIGHT, 5000).toString());
		assertTrue(forms.with(heavy, WEIGHT, 400).isEmpty());
		Letterforms bold = new Letterforms(List.of(), Map.of(), List.of(WEIGHT), List.of(), BOLD.settings());
		assertEquals(700, bold.value(WEIGHT, AxisSettings.NONE));
		assertEquals("wght=400", bold.with(AxisSettings.NONE, WEIGHT, 400).toString());
	}

	@Test
	void namedStyleIsTheOneWithAllItsValues() {
		AxisSettings narrow = forms.with(AxisSettings.NONE, NARROW);
		assertEquals("wdth=75,wght=700", narrow.toString());
		assertEquals(NARROW, forms.instance(narrow).orElseThrow());
		assertEquals("wght=700", forms.with(narrow, BOLD).toString());
		assertEquals(BOLD, forms.instance(AxisSettings.parse("wght=700")).orElseThrow());
		assertTrue(forms.instance(AxisSettings.parse("wght=650")).isEmpty());
	}

	@Test
	void ofSeveralFontsWhatAllHave() {
		Letterforms plain = new Letterforms(List.of("onum", "smcp"), Map.of(), List.of(WEIGHT), List.of(), AxisSettings.NONE);
		Letterforms common = Letterforms.common(List.of(forms, plain));
		assertEquals(List.of("smcp"), common.features());
		assertEquals(List.of(WEIGHT), common.axes());
		assertEquals(List.of(), common.instances());
		assertEquals(Letterforms.NONE, Letterforms.common(List.of()));
	}

	@Test
	void fontOfAJobIsFoundWithItsFeatures() {
		FontFace face = new FontFinder(FontLibrary.standard()).find(Jobs.font("Liberation Sans", "Bold", null, null))
				.orElseThrow();
		assertEquals("Bold", face.style());
		assertFalse(face.features().isEmpty());
		assertEquals(FeatureNames.chosenByEye(face.features()), Letterforms.of(face).features());
		assertEquals(List.of(), Letterforms.of(face).axes());
		assertTrue(new FontFinder(FontLibrary.standard()).find(null).isEmpty());
	}

	@Test
	void featureIsSetAndNoMoreSpokenOf() {
		FeatureList list = FeatureList.parse("smcp,-kern").with("onum", OptionalInt.of(1)).with("smcp", OptionalInt.empty());
		assertEquals("-kern,onum", list.toString());
	}

	@Test
	void setsAreCalledWhatTheFontCallsThem() {
		FeatureNames german = FeatureNames.in(Locale.GERMAN);
		Letterforms one = new Letterforms(List.of("smcp", "ss01", "ss02", "ss03"),
				Map.of("ss01", "Ferry numerals", "ss02", "Straight tails"), List.of(), List.of(), AxisSettings.NONE);
		Letterforms other = new Letterforms(List.of("ss01", "ss02"),
				Map.of("ss01", "Harbour ampersand", "ss02", "Straight tails"), List.of(), List.of(), AxisSettings.NONE);
		assertEquals("Ferry numerals", one.name("ss01", german));
		assertEquals(german.of("ss03"), one.name("ss03", german));
		Letterforms common = Letterforms.common(List.of(one, other));
		assertEquals(german.of("ss01"), common.name("ss01", german), "two fonts that mean different things");
		assertEquals("Straight tails", common.name("ss02", german));
	}
}
