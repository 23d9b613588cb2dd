package org.frisket.export.pdf;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** What describes a document, as XMP (ISO 16684-1); it says the same as the document's information dictionary. */
final class XmpPacket {

	private XmpPacket() {
	}

	/** @param digest of the content, from which the document's id is made */
	static byte[] of(String title, String subject, String creator, byte[] digest) {
		StringBuilder text = new StringBuilder();
		text.append("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n");
		text.append("<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n");
		text.append("<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n");
		text.append("<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\"")
				.append(" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmlns:xmpMM=\"http://ns.adobe.com/xap/1.0/mm/\"")
				.append(" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\">\n");
		text.append("<dc:format>application/pdf</dc:format>\n");
		alternatives(text, "dc:title", title);
		alternatives(text, "dc:description", subject);
		text.append("<xmp:CreatorTool>").append(escaped(creator)).append("</xmp:CreatorTool>\n");
		text.append("<xmpMM:DocumentID>uuid:").append(UUID.nameUUIDFromBytes(digest)).append("</xmpMM:DocumentID>\n");
		text.append("<pdf:Trapped>False</pdf:Trapped>\n");
		text.append("</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>");
		return text.toString().getBytes(StandardCharsets.UTF_8);
	}

	private static void alternatives(StringBuilder text, String name, String value) {
		if (!value.isEmpty()) {
			text.append('<').append(name).append("><rdf:Alt><rdf:li xml:lang=\"x-default\">").append(escaped(value))
					.append("</rdf:li></rdf:Alt></").append(name).append(">\n");
		}
	}

	/** For text; what XML 1.0 cannot hold becomes a space. */
	private static String escaped(String raw) {
		StringBuilder safe = new StringBuilder(raw.length());
		raw.codePoints().forEach(c -> {
			boolean allowed = c == '\n' || c >= 0x20 && c < 0xD800 || c > 0xDFFF && c < 0xFFFE || c > 0xFFFF;
			switch (c) {
			case '&' -> safe.append("&amp;");
			case '<' -> safe.append("&lt;");
			case '>' -> safe.append("&gt;");
			default -> safe.appendCodePoint(allowed ? c : ' ');
			}
		});
		return safe.toString();
	}
}
