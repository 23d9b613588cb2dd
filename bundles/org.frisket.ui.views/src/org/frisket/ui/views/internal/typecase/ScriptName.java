package org.frisket.ui.views.internal.typecase;

import java.lang.Character.UnicodeScript;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** What scripts are called in the user's language. */
final class ScriptName {

	/** ISO 15924 codes of scripts whose names Java knows in many languages. */
	private static final String CODES = "Arab Armn Beng Bopo Brai Cans Cher Copt Cyrl Deva Ethi Geor Goth Grek Gujr Guru Hang "
			+ "Hani Hebr Hira Kana Khmr Knda Laoo Latn Mlym Mong Mymr Nkoo Ogam Orya Runr Sinh Syrc Taml Telu Thaa Thai "
			+ "Tibt Tfng Vaii Yiii"; //$NON-NLS-1$

	private static final Map<UnicodeScript, String> KNOWN = known();

	private ScriptName() {
	}

	private static Map<UnicodeScript, String> known() {
		Map<UnicodeScript, String> known = new HashMap<>();
		for (String code : CODES.split(" ")) { //$NON-NLS-1$
			known.put(UnicodeScript.forName(code), code);
		}
		return known;
	}

	static String of(UnicodeScript script) {
		String code = KNOWN.get(script);
		if (code != null) {
			return new Locale.Builder().setScript(code).build().getDisplayScript();
		}
		String name = script.name().replace('_', ' ').toLowerCase(Locale.ROOT);
		return Character.toUpperCase(name.charAt(0)) + name.substring(1);
	}
}
