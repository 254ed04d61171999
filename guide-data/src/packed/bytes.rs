//! Numbers and texts as bytes, and back.

use std::collections::BTreeMap;

/// The zero tells tools that take a file of this name for text, such as git, that it is none.
const MAGIC: &[u8; 4] = b"LID\0";
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
///
/// What cannot be read is read as nothing, and [`Reader::finish`] tells where that began: whoever reads
/// needs no way out of every line, which on a phone would be most of the code.
pub(super) struct Reader<'b> {
    bytes: &'b [u8],
    at: usize,
    texts: Vec<&'b str>,
    problem: Option<PackProblem>,
}

impl<'b> Reader<'b> {
    /// Looks at the head, and takes the texts.
    pub(super) fn open(bytes: &'b [u8], kind: u8) -> Self {
        let mut reader = Self { bytes, at: HEAD, texts: Vec::new(), problem: None };
        reader.problem = reader.head(kind).err();
        let count = reader.count();
        let mut lengths = Vec::with_capacity(count);
        for _ in 0..count {
            lengths.push(reader.count());
        }
        for length in lengths {
            let text = reader.bytes.get(reader.at..).and_then(|rest| rest.get(..length));
            let Some(text) = text.and_then(|text| std::str::from_utf8(text).ok()) else {
                reader.damaged();
                break;
            };
            reader.texts.push(text);
            reader.at += length;
        }
        reader
    }

    fn head(&self, kind: u8) -> Result<(), PackProblem> {
        let (Some(head), Some(body)) = (self.bytes.get(..HEAD), self.bytes.get(HEAD..)) else {
            return Err(PackProblem::OtherFile);
        };
        if !head.starts_with(MAGIC) || head.get(4) != Some(&kind) {
            return Err(PackProblem::OtherFile);
        }
        match head.get(5) {
            Some(&VERSION) => {}
            other => return Err(PackProblem::OtherVersion(other.copied().unwrap_or_default())),
        }
        if !head.ends_with(&checksum(body).to_le_bytes()) {
            return Err(PackProblem::Damaged(HEAD));
        }
        Ok(())
    }

    /// What was read last cannot be.
    pub(super) fn damaged(&mut self) {
        self.refuse(PackProblem::Damaged(self.at));
    }

    /// The first problem is the one that is told; from then on only nothing is read.
    pub(super) fn refuse(&mut self, problem: PackProblem) {
        self.problem.get_or_insert(problem);
        self.at = self.bytes.len();
    }

    #[inline(never)]
    pub(super) fn number(&mut self) -> u64 {
        let (mut number, mut shift) = (0, 0);
        while let (Some(&byte), None) = (self.bytes.get(self.at), self.problem) {
            self.at += 1;
            number |= u64::from(byte & 0x7f) << shift;
            if byte & 0x80 == 0 {
                return number;
            }
            shift += 7;
            if shift > 63 {
                break;
            }
        }
        self.damaged();
        0
    }

    fn narrow<T: TryFrom<u64> + Default>(&mut self) -> T {
        let number = self.number();
        T::try_from(number).unwrap_or_else(|_| {
            self.damaged();
            T::default()
        })
    }

    #[inline(never)]
    pub(super) fn size(&mut self) -> usize {
        self.narrow()
    }

    #[inline(never)]
    pub(super) fn byte(&mut self) -> u8 {
        self.narrow()
    }

    #[inline(never)]
    pub(super) fn small(&mut self) -> u16 {
        self.narrow()
    }

    #[inline(never)]
    pub(super) fn medium(&mut self) -> u32 {
        self.narrow()
    }

    pub(super) fn signed(&mut self) -> i64 {
        let number = self.number();
        let half = i64::from_ne_bytes((number >> 1).to_ne_bytes());
        if number & 1 == 0 { half } else { !half }
    }

    #[inline(never)]
    pub(super) fn float(&mut self) -> f64 {
        let bits = self.bytes.get(self.at..).and_then(|rest| rest.first_chunk::<8>());
        let Some(bits) = bits else {
            self.damaged();
            return 0.0;
        };
        self.at += 8;
        f64::from_bits(u64::from_le_bytes(*bits))
    }

    /// The length of a list. Each entry takes a byte at least.
    #[inline(never)]
    pub(super) fn count(&mut self) -> usize {
        let count = self.size();
        if count > self.bytes.len() - self.at {
            self.damaged();
            return 0;
        }
        count
    }

    fn place(&mut self, at: usize) -> &'b str {
        let text = self.texts.get(at).copied();
        if text.is_none() {
            self.damaged();
        }
        text.unwrap_or_default()
    }

    #[inline(never)]
    pub(super) fn text(&mut self) -> String {
        let at = self.size();
        self.place(at).to_owned()
    }

    #[inline(never)]
    pub(super) fn maybe(&mut self) -> Option<String> {
        let at = self.size().checked_sub(1)?;
        Some(self.place(at).to_owned())
    }

    /// A list, of which no more is read once something could not be.
    pub(super) fn all<T>(&mut self, read: impl Fn(&mut Self) -> T) -> Vec<T> {
        let count = self.count();
        let mut all = Vec::new();
        for _ in 0..count {
            if self.problem.is_some() {
                break;
            }
            all.push(read(self));
        }
        all
    }

    #[inline(never)]
    pub(super) fn list(&mut self) -> Vec<String> {
        self.all(Self::text)
    }

    /// So many answers of yes or no, the first in the lowest bit.
    #[inline(never)]
    pub(super) fn flags(&mut self, count: u32) -> u64 {
        let flags = self.number();
        if flags >> count != 0 {
            self.damaged();
        }
        flags
    }

    pub(super) fn flag(&mut self) -> bool {
        self.flags(1) == 1
    }

    /// Nothing may follow, and nothing may have been wrong.
    pub(super) fn finish<T>(&mut self, read: T) -> Result<T, PackProblem> {
        if self.at != self.bytes.len() {
            self.damaged();
        }
        match self.problem {
            None => Ok(read),
            Some(problem) => Err(problem),
        }
    }
}
