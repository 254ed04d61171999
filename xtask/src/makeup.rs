//! What a compiled program is made of: the bytes of each crate's functions, from the names the
//! compiler leaves in before the glue's writer takes them out.
//!
//! Link-time optimisation inlines across crates, so a function counts for the crate whose name it bears,
//! and generic code for the crate that defines it.

use std::collections::BTreeMap;

use wasmparser::{KnownCustom, Name, Parser, Payload, TypeRef};

use crate::problem::{Outcome, Problem};

/// Bytes by crate, the largest first; static data is one entry of its own.
pub(crate) fn by_crate(wasm: &[u8]) -> Outcome<Vec<(String, u64)>> {
    let refused = |error: wasmparser::BinaryReaderError| Problem::new(format!("not WebAssembly: {error}"));
    let mut imported: u32 = 0;
    let mut bodies: Vec<u64> = Vec::new();
    let mut data: u64 = 0;
    let mut names: BTreeMap<u32, String> = BTreeMap::new();
    for payload in Parser::new(0).parse_all(wasm) {
        match payload.map_err(refused)? {
            Payload::ImportSection(imports) => {
                for import in imports.into_imports() {
                    if matches!(import.map_err(refused)?.ty, TypeRef::Func(_)) {
                        imported += 1;
                    }
                }
            }
            Payload::CodeSectionEntry(body) => bodies.push(body.range().len() as u64),
            Payload::DataSection(section) => data = section.range().len() as u64,
            Payload::CustomSection(section) => {
                let KnownCustom::Name(subsections) = section.as_known() else { continue };
                for subsection in subsections {
                    let Name::Function(functions) = subsection.map_err(refused)? else { continue };
                    for naming in functions {
                        let naming = naming.map_err(refused)?;
                        names.insert(naming.index, owner(naming.name));
                    }
                }
            }
            _ => {}
        }
    }
    let mut sums: BTreeMap<String, u64> = BTreeMap::new();
    for (index, bytes) in (imported..).zip(bodies) {
        let owner = names.get(&index).map_or("(no name)", String::as_str);
        *sums.entry(owner.to_owned()).or_default() += bytes;
    }
    sums.insert("(static data)".to_owned(), data);
    let mut sums: Vec<(String, u64)> = sums.into_iter().collect();
    sums.sort_by(|a, b| b.1.cmp(&a.1).then_with(|| a.0.cmp(&b.0)));
    Ok(sums)
}

/// The crate of a function: the first word of its path, for `<Type as Trait>::method` that of the type.
fn owner(mangled: &str) -> String {
    let demangled = format!("{:#}", rustc_demangle::demangle(mangled));
    let path = demangled
        .trim_start_matches(['<', '&', '*', '(', '[', ' '])
        .trim_start_matches("mut ")
        .trim_start_matches("dyn ");
    match path.split_once("::") {
        Some((first, _)) if first.chars().all(|c| c.is_alphanumeric() || c == '_') => first.to_owned(),
        _ => "(no crate)".to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_function_belongs_to_its_first_word() {
        assert_eq!(owner("guide_data::ask::next"), "guide_data");
        assert_eq!(owner("_ZN10guide_data3ask4next17h0123456789abcdefE"), "guide_data");
        assert_eq!(owner("<&mut dyn tachys::view::Render as core::fmt::Debug>::fmt"), "tachys");
        assert_eq!(owner("__wbindgen_malloc"), "(no crate)");
    }

    #[test]
    fn bytes_are_summed_by_crate() {
        // One imported function, two of our own (4 and 2 bytes with their counts of locals), names.
        let mut wasm = b"\0asm\x01\0\0\0".to_vec();
        let mut section = |id: u8, body: &[u8]| {
            wasm.push(id);
            wasm.push(u8::try_from(body.len()).unwrap());
            wasm.extend_from_slice(body);
        };
        section(1, &[1, 0x60, 0, 0]);
        section(2, &[1, 1, b'm', 1, b'f', 0, 0]);
        section(3, &[2, 0, 0]);
        section(10, &[2, 4, 0, 1, 1, 0x0b, 2, 0, 0x0b]);
        let mut names = vec![4];
        names.extend_from_slice(b"name");
        let functions: &[u8] = b"\x02\x01\x04a::b\x02\x07<c::d>e";
        names.push(1);
        names.push(u8::try_from(functions.len()).unwrap());
        names.extend_from_slice(functions);
        section(0, &names);
        let sums = by_crate(&wasm).unwrap();
        let expected = [("a", 4), ("c", 2), ("(static data)", 0)];
        let expected: Vec<_> = expected.map(|(name, bytes)| (name.to_owned(), bytes)).into();
        assert_eq!(sums, expected);
        assert!(by_crate(b"\0asm\x01\0\0\0\x0a\x05").is_err());
    }
}
