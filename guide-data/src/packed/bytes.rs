//! Numbers and texts as bytes, and back.

use std::collections::BTreeMap;

const MAGIC: &[u8; 4] = b"LIDL";
/// The version of the format; a reader takes no other.
pub const VERSION: u8 = 1;
/// Magic, kind, version, checksum.
const HEAD: usize = 14;

/// Why bytes could not be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PackProblem {
    /// They are something else: another kind of file altogether.
    OtherFile,
    /// They are of a version that this program does not read; it is named.
    OtherVersion(u8),
    /// They changed on their way, or end too early: the first byte that cannot be, counted from 0.
    Damaged(usize),
    /// They are whole, but belong to another guide than the one they were to be read with.
    OtherGuide,
}

impl PackProblem {
    /// A stable word for messages and machine output.
    #[must_use]
    pub fn code(self) -> &'static str {
        match self {
            Self::OtherFile => "other-file",
            Self::OtherVersion(_) => "other-version",
            Self::Damaged(_) => "damaged",
            Self::OtherGuide => "other-guide",
        }
    }
}

/// FNV-1a, 64 bits.
pub(super) fn checksum<'b>(bytes: impl IntoIterator<Item = &'b u8>) -> u64 {
    let start = 0xcbf2_9ce4_8422_2325_u64;
    bytes.into_iter().fold(start, |sum, &b| (sum ^ u64::from(b)).wrapping_mul(0x0000_0100_0000_01b3))
}

/// Writes numbers and texts.
#[derive(Default)]
pub(super) struct Writer {
    numbers: Vec<u8>,
    texts: Vec<String>,
    known: BTreeMap<String, usize>,
}

fn push_number(out: &mut Vec<u8>, mut number: u64) {
    while number >= 0x80 {
        out.push(u8::try_from(number & 0x7f).unwrap_or_default() | 0x80);
        number >>= 7;
    }
    out.push(u8::try_from(number).unwrap_or_default());
}

impl Writer {
    pub(super) fn number(&mut self, number: u64) {
        push_number(&mut self.numbers, number);
    }

    pub(super) fn size(&mut self, number: usize) {
        self.number(u64::try_from(number).unwrap_or(u64::MAX));
    }

    /// A whole number of either sign: small ones of both are short.
    pub(super) fn signed(&mut self, number: i64) {
        self.number(u64::from_ne_bytes(((number << 1) ^ (number >> 63)).to_ne_bytes()));
    }

    pub(super) fn float(&mut self, number: f64) {
        self.numbers.extend(number.to_bits().to_le_bytes());
    }

    fn place(&mut self, text: &str) -> usize {
        if let Some(&known) = self.known.get(text) {
            return known;
        }
        let at = self.texts.len();
        self.texts.push(text.to_owned());
        self.known.insert(text.to_owned(), at);
        at
    }

    pub(super) fn text(&mut self, text: &str) {
        let at = self.place(text);
        self.size(at);
    }

    pub(super) fn maybe(&mut self, text: Option<&str>) {
        let number = text.map_or(0, |text| self.place(text) + 1);
        self.size(number);
    }

    pub(super) fn list(&mut self, texts: &[String]) {
        self.size(texts.len());
        for text in texts {
            self.text(text);
        }
    }

    /// Up to 64 answers of yes or no, the first in the lowest bit.
    pub(super) fn flags(&mut self, flags: &[bool]) {
        let sum = flags.iter().rev().fold(0, |sum, &flag| sum << 1 | u64::from(flag));
        self.number(sum);
    }

    pub(super) fn finish(self, kind: u8) -> Vec<u8> {
        let mut body = Vec::new();
        push_number(&mut body, self.texts.len() as u64);
        for text in &self.texts {
            push_number(&mut body, text.len() as u64);
        }
        for text in &self.texts {
            body.extend(text.as_bytes());
        }
        body.extend(self.numbers);
        seal(kind, &body)
    }
}

/// Puts the head before a body.
pub(super) fn seal(kind: u8, body: &[u8]) -> Vec<u8> {
    let mut out = MAGIC.to_vec();
    out.push(kind);
    out.push(VERSION);
    out.extend(checksum(body).to_le_bytes());
    out.extend(body);
    out
}

/// Reads what [`Writer`] wrote.
pub(super) struct Reader<'b> {
    bytes: &'b [u8],
    at: usize,
    texts: Vec<&'b str>,
}

pub(super) type Read<T> = Result<T, PackProblem>;

impl<'b> Reader<'b> {
    /// Looks at the head, and takes the texts.
    pub(super) fn open(bytes: &'b [u8], kind: u8) -> Read<Self> {
        let (Some(head), Some(body)) = (bytes.get(..HEAD), bytes.get(HEAD..)) else {
            return Err(PackProblem::OtherFile);
        };
        if head.get(..4) != Some(MAGIC) || head.get(4) != Some(&kind) {
            return Err(PackProblem::OtherFile);
        }
        match head.get(5) {
            Some(&VERSION) => {}
            other => return Err(PackProblem::OtherVersion(other.copied().unwrap_or_default())),
        }
        if head.get(6..) != Some(&checksum(body).to_le_bytes()[..]) {
            return Err(PackProblem::Damaged(HEAD));
        }
        let mut reader = Self { bytes, at: HEAD, texts: Vec::new() };
        let count = reader.count()?;
        let mut lengths = Vec::with_capacity(count);
        for _ in 0..count {
            lengths.push(reader.count()?);
        }
        for length in lengths {
            let end = reader.at.checked_add(length).ok_or(reader.damaged())?;
            let text = bytes.get(reader.at..end).and_then(|text| std::str::from_utf8(text).ok());
            reader.texts.push(text.ok_or(reader.damaged())?);
            reader.at = end;
        }
        Ok(reader)
    }

    pub(super) fn damaged(&self) -> PackProblem {
        PackProblem::Damaged(self.at)
    }

    fn byte(&mut self) -> Read<u8> {
        let byte = self.bytes.get(self.at).copied().ok_or(self.damaged())?;
        self.at += 1;
        Ok(byte)
    }

    pub(super) fn number(&mut self) -> Read<u64> {
        let (mut number, mut shift) = (0, 0);
        loop {
            let byte = self.byte()?;
            if shift > 63 {
                return Err(self.damaged());
            }
            number |= u64::from(byte & 0x7f) << shift;
            if byte & 0x80 == 0 {
                return Ok(number);
            }
            shift += 7;
        }
    }

    pub(super) fn size(&mut self) -> Read<usize> {
        let number = self.number()?;
        usize::try_from(number).map_err(|_| self.damaged())
    }

    pub(super) fn small(&mut self) -> Read<u16> {
        let number = self.number()?;
        u16::try_from(number).map_err(|_| self.damaged())
    }

    pub(super) fn medium(&mut self) -> Read<u32> {
        let number = self.number()?;
        u32::try_from(number).map_err(|_| self.damaged())
    }

    pub(super) fn signed(&mut self) -> Read<i64> {
        let number = self.number()?;
        let half = i64::from_ne_bytes((number >> 1).to_ne_bytes());
        Ok(if number & 1 == 0 { half } else { !half })
    }

    pub(super) fn float(&mut self) -> Read<f64> {
        let mut bits = 0_u64;
        for place in 0..8 {
            bits |= u64::from(self.byte()?) << (8 * place);
        }
        Ok(f64::from_bits(bits))
    }

    /// The length of a list. Each entry takes a byte at least.
    pub(super) fn count(&mut self) -> Read<usize> {
        let count = self.size()?;
        if count > self.bytes.len() - self.at { Err(self.damaged()) } else { Ok(count) }
    }

    fn place(&self, at: usize) -> Read<&'b str> {
        self.texts.get(at).copied().ok_or(self.damaged())
    }

    pub(super) fn text(&mut self) -> Read<String> {
        let at = self.size()?;
        Ok(self.place(at)?.to_owned())
    }

    pub(super) fn maybe(&mut self) -> Read<Option<String>> {
        match self.size()?.checked_sub(1) {
            None => Ok(None),
            Some(at) => Ok(Some(self.place(at)?.to_owned())),
        }
    }

    pub(super) fn list(&mut self) -> Read<Vec<String>> {
        let count = self.count()?;
        let mut texts = Vec::with_capacity(count);
        for _ in 0..count {
            texts.push(self.text()?);
        }
        Ok(texts)
    }

    pub(super) fn flags(&mut self, count: u32) -> Read<u64> {
        let flags = self.number()?;
        if flags >> count == 0 { Ok(flags) } else { Err(self.damaged()) }
    }

    /// Nothing may follow.
    pub(super) fn finish(&self) -> Read<()> {
        if self.at == self.bytes.len() { Ok(()) } else { Err(self.damaged()) }
    }
}
