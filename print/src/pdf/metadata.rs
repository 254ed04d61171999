//! The XMP packet: what the file says about itself.

use std::fmt::Write as _;

use crate::job::SheetJob;

/// The program's name in the file.
pub(super) const TOOL: &str = "Lidleaf";

/// Text as XML has it. Control characters have been refused before.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            c => out.push(c),
        }
    }
    out
}

/// The file's id in the form of a UUID (its version and variant bits set as for one made from a digest).
fn uuid(id: &[u8; 16]) -> String {
    let mut out = String::from("uuid:");
    for (index, byte) in id.iter().enumerate() {
        let byte = match index {
            6 => byte & 0x0f | 0x80,
            8 => byte & 0x3f | 0x80,
            _ => *byte,
        };
        if matches!(index, 4 | 6 | 8 | 10) {
            out.push('-');
        }
        // Writing to a string cannot fail.
        let _ = write!(out, "{byte:02x}");
    }
    out
}

/// Which standard the file claims.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    /// PDF/X-4, ISO 15930-7.
    Press,
    /// PDF/UA-1, ISO 14289-1.
    Accessible,
}

/// The packet. PDF/X-4 asks for the version key, document and version ids, dates and title; PDF/UA-1 for its part
/// and the title.
pub(super) fn xmp(job: &SheetJob, id: &[u8; 16], kind: Kind) -> String {
    let claim = match kind {
        Kind::Press => {
            "<pdf:Trapped>False</pdf:Trapped>\n<pdfxid:GTS_PDFXVersion>PDF/X-4</pdfxid:GTS_PDFXVersion>"
        }
        Kind::Accessible => "<pdfuaid:part>1</pdfuaid:part>",
    };
    let space = match kind {
        Kind::Press => r#"xmlns:pdfxid="http://www.npes.org/pdfx/ns/id/""#,
        Kind::Accessible => r#"xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/""#,
    };
    let (title, date) = (escaped(&job.job_name), format!("{}T00:00:00Z", escaped(&job.date)));
    let id = uuid(id);
    let languages: String =
        job.languages.iter().map(|block| format!("<rdf:li>{}</rdf:li>", escaped(&block.lang))).collect();
    format!(
        r#"<?xpacket begin="{bom}" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:xmpMM="http://ns.adobe.com/xap/1.0/mm/" {space}>
<dc:format>application/pdf</dc:format>
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
<dc:language><rdf:Bag>{languages}</rdf:Bag></dc:language>
<xmp:CreateDate>{date}</xmp:CreateDate>
<xmp:ModifyDate>{date}</xmp:ModifyDate>
<xmp:MetadataDate>{date}</xmp:MetadataDate>
<xmp:CreatorTool>{TOOL}</xmp:CreatorTool>
<pdf:Producer>{TOOL}</pdf:Producer>
<xmpMM:DocumentID>{id}</xmpMM:DocumentID>
<xmpMM:InstanceID>{id}</xmpMM:InstanceID>
<xmpMM:RenditionClass>default</xmpMM:RenditionClass>
<xmpMM:VersionID>1</xmpMM:VersionID>
{claim}
</rdf:Description>
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="r"?>"#,
        bom = '\u{FEFF}'
    )
}
