//! guide-data
