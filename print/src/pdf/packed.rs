//! Objects that are packed together: object streams and the cross-reference stream that finds them (ISO 32000-1, 7.5.7
//! and 7.5.8), which `pdf-writer` leaves to its callers. A structure is many hundred small objects that say nearly the
//! same, and packs to a tenth.

use pdf_writer::{Chunk, Filter, Finish, Name, Pdf, Ref, Settings, Str};

use super::{Objects, Packer};

/// Objects that are no streams, written apart to be packed.
#[derive(Default)]
pub(super) struct Packed {
    /// Number and bytes of each, in the order of writing.
    objects: Vec<(Ref, Vec<u8>)>,
}

/// What a reader starts from.
pub(super) struct Start {
    pub(super) root: Ref,
    pub(super) info: Ref,
    pub(super) id: [u8; 16],
}

impl Packed {
    /// Writes one object.
    pub(super) fn write(&mut self, id: Ref, write: impl FnOnce(&mut Chunk)) {
        let mut chunk = Chunk::with_settings(Settings { pretty: false });
        write(&mut chunk);
        // A packed object has neither its number around it nor an end.
        let bytes = chunk.as_bytes();
        let head = format!("{} 0 obj", id.get());
        let body = bytes.strip_prefix(head.as_bytes()).unwrap_or(bytes).trim_ascii();
        let body = body.strip_suffix(b"endobj").unwrap_or(body).trim_ascii();
        self.objects.push((id, body.to_vec()));
    }

    /// Ends a file with these objects in one stream.
    pub(super) fn finish(
        self,
        mut pdf: Pdf,
        start: &Start,
        objects: &mut Objects,
        packer: &mut Packer,
    ) -> Vec<u8> {
        let (stream, table) = (objects.next(), objects.next());
        let (mut index, mut bodies) = (String::new(), Vec::new());
        for (id, body) in &self.objects {
            index.push_str(&format!("{} {} ", id.get(), bodies.len()));
            bodies.extend_from_slice(body);
            bodies.push(b'\n');
        }
        let first = number(index.len());
        let mut data = index.into_bytes();
        data.append(&mut bodies);
        let packed = packer.deflate(&data);
        let mut out = pdf.stream(stream, &packed);
        out.filter(Filter::FlateDecode);
        out.pair(Name(b"Type"), Name(b"ObjStm"));
        out.pair(Name(b"N"), number(self.objects.len()));
        out.pair(Name(b"First"), first);
        out.finish();

        let mut file = pdf.finish();
        let mut places = take_table(&mut file);
        places.resize(usize::try_from(table.get()).unwrap_or_default() + 1, Place::Free);
        let mut put = |id: Ref, place: Place| {
            let own = usize::try_from(id.get()).ok().and_then(|at| places.get_mut(at));
            if let Some(own) = own {
                *own = place;
            }
        };
        for (at, (id, _)) in self.objects.iter().enumerate() {
            put(*id, Place::In(stream, number(at)));
        }
        let end = number(file.len());
        put(table, Place::At(end));
        let rows: Vec<u8> = places.iter().flat_map(|place| place.row()).collect();
        let packed = packer.deflate(&rows);
        let mut chunk = Chunk::new();
        let mut out = chunk.stream(table, &packed);
        out.filter(Filter::FlateDecode);
        out.pair(Name(b"Type"), Name(b"XRef"));
        out.pair(Name(b"Size"), number(places.len()));
        out.insert(Name(b"W")).array().items(ROW);
        out.pair(Name(b"Root"), start.root);
        out.pair(Name(b"Info"), start.info);
        out.insert(Name(b"ID")).array().item(Str(&start.id)).item(Str(&start.id));
        out.finish();
        file.extend_from_slice(chunk.as_bytes());
        file.extend_from_slice(format!("startxref\n{end}\n%%EOF").as_bytes());
        file
    }
}

/// Where an object is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Place {
    /// There is none of this number.
    Free,
    /// So many bytes from the file's start.
    At(i32),
    /// In an object stream, as the so many-th from 0.
    In(Ref, i32),
}

/// The widths of a row's three fields, in bytes.
const ROW: [i32; 3] = [1, 4, 2];

impl Place {
    /// Its row in the cross-reference stream.
    fn row(self) -> [u8; 7] {
        let (kind, second, third) = match self {
            Self::Free => (0, 0, 0),
            Self::At(offset) => (1, offset, 0),
            Self::In(stream, at) => (2, stream.get(), at),
        };
        let ([a, b, c, d], [.., e, f]) = (second.to_be_bytes(), third.to_be_bytes());
        [kind, a, b, c, d, e, f]
    }
}

/// Takes the plain table that `pdf-writer` ends a file with off it: where each object is, by its number. Each row has
/// twenty bytes, ten of them the offset (7.5.4).
fn take_table(file: &mut Vec<u8>) -> Vec<Place> {
    const HEAD: &[u8] = b"xref\n0 ";
    let words = |bytes: &[u8]| String::from_utf8_lossy(bytes).trim().to_owned();
    let tail = file.rchunks(64).next().map(words).unwrap_or_default();
    let offset = tail.split_whitespace().rev().nth(1).and_then(|word| word.parse().ok());
    let table = file.split_off(offset.unwrap_or(file.len()));
    let Some(table) = table.strip_prefix(HEAD) else { return Vec::new() };
    let rows = table.iter().position(|byte| *byte == b'\n').and_then(|end| table.get(end + 1..));
    let place = |row: &[u8]| -> Option<Place> {
        let used = *row.get(17)? == b'n';
        let offset = words(row.get(..10)?).parse().ok()?;
        Some(if used { Place::At(offset) } else { Place::Free })
    };
    let rows = rows.unwrap_or_default().chunks_exact(20);
    rows.take_while(|row| row.get(18..) == Some(b"\r\n")).map_while(place).collect()
}

/// A count as the file states it. No file has two billion bytes.
fn number(count: usize) -> i32 {
    i32::try_from(count).unwrap_or(i32::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Read back by the rules of the standard, every object is where the table says, packed or not.
    #[test]
    fn every_object_is_found_where_the_table_says() {
        let mut objects = Objects(0);
        let (root, info, tree) = (objects.next(), objects.next(), objects.next());
        let elements: Vec<Ref> = (0..300).map(|_| objects.next()).collect();
        let mut pdf = Pdf::new();
        pdf.catalog(root).pages(tree);
        pdf.document_info(info).title(pdf_writer::TextStr("A title"));
        pdf.pages(tree).count(0);
        let mut packed = Packed::default();
        for id in &elements {
            packed.write(*id, |out| {
                out.indirect(*id).dict().pair(Name(b"Own"), id.get());
            });
        }
        let start = Start { root, info, id: [7; 16] };
        let file = packed.finish(pdf, &start, &mut objects, &mut Packer::hard());

        let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
        let end = text(&file);
        let mut words = end.split_whitespace().rev();
        assert_eq!(words.next(), Some("%%EOF"));
        let table: usize = words.next().unwrap().parse().unwrap();
        let stream_at = |at: usize| {
            let rest = &file[at..];
            let from = rest.windows(8).position(|it| it == b"\nstream\n").unwrap() + 8;
            let head = text(&rest[..from]);
            let mut inflate = zlib_rs::Inflate::new(true, 15);
            let mut data = vec![0; 1 << 20];
            inflate.decompress(&rest[from..], &mut data, zlib_rs::InflateFlush::Finish).unwrap();
            data.truncate(usize::try_from(inflate.total_out()).unwrap());
            (data, head)
        };
        let (rows, head) = stream_at(table);
        assert!(head.contains("/Type /XRef") && head.contains("/Root 1 0 R"), "{head}");
        let rows: Vec<&[u8]> = rows.chunks(7).collect();
        // Three objects, the packed ones, their stream, the table, and number 0, which is none.
        assert_eq!(rows.len(), 3 + elements.len() + 2 + 1);
        let field = |row: &[u8]| {
            let second = u32::from_be_bytes([row[1], row[2], row[3], row[4]]) as usize;
            (row[0], second, usize::from(u16::from_be_bytes([row[5], row[6]])))
        };
        assert_eq!(field(rows[0]).0, 0);
        let mut inside = None;
        for (id, row) in rows.iter().enumerate().skip(1) {
            let (kind, second, third) = field(row);
            if elements.iter().any(|element| element.get() as usize == id) {
                assert_eq!(kind, 2, "{id}");
                let (data, head) = inside.get_or_insert_with(|| stream_at(field(rows[second]).1));
                let first = head.split("/First ").nth(1).unwrap().split_whitespace().next().unwrap();
                let first: usize = first.parse().unwrap();
                let index = text(&data[..first]);
                let numbers: Vec<usize> = index.split_whitespace().map(|it| it.parse().unwrap()).collect();
                assert_eq!(numbers[third * 2], id);
                let own = text(&data[first + numbers[third * 2 + 1]..]);
                assert!(own.starts_with(&format!("<</Own {id}>>\n")), "{id}: {own}");
            } else {
                assert_eq!(kind, 1, "{id}");
                assert!(file[second..].starts_with(format!("{id} 0 obj\n").as_bytes()), "{id}");
            }
        }
    }
}
