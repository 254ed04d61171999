//! locales
