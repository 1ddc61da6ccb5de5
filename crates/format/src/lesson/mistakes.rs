//! Reads on after a mistake, so that all of them are told at once.

use crate::node::{Node, Object};
use crate::problem::Problem;

/// The mistakes met so far. What is read is none where it is one of them.
#[derive(Default)]
pub(super) struct Mistakes(Vec<Problem>);

impl Mistakes {
    pub(super) fn push(&mut self, problem: Problem) {
        self.0.push(problem);
    }

    pub(super) fn into_problems(self) -> Vec<Problem> {
        self.0
    }

    pub(super) fn keep<T>(&mut self, read: Result<T, Problem>) -> Option<T> {
        read.map_err(|problem| self.push(problem)).ok()
    }

    /// An object, each key that is none of these kept as a mistake.
    pub(super) fn object<'a>(&mut self, node: &'a Node<'a>, keys: &'static [&'static str]) -> Option<Object<'a>> {
        let object = self.keep(node.open())?;
        object.unknown(keys).for_each(|problem| self.push(problem));
        Some(object)
    }

    /// A key that must be there.
    pub(super) fn need<T>(
        &mut self,
        object: &Object<'_>,
        key: &'static str,
        read: impl Fn(&Node<'_>) -> Result<T, Problem>,
    ) -> Option<T> {
        self.keep(object.get(key).and_then(|node| read(&node)))
    }

    /// A key that may be left out: what it is then is none too, within what was read.
    pub(super) fn may<T>(
        &mut self,
        object: &Object<'_>,
        key: &'static str,
        read: impl Fn(&Node<'_>) -> Result<T, Problem>,
    ) -> Option<Option<T>> {
        self.keep(object.find(key).map(|node| read(&node)).transpose())
    }

    /// The items of a list that must be there.
    pub(super) fn list<T>(
        &mut self,
        object: &Object<'_>,
        key: &'static str,
        read: impl Fn(&Node<'_>) -> Result<T, Problem>,
    ) -> Option<Vec<T>> {
        let node = self.keep(object.get(key))?;
        self.items(&node, read)
    }

    /// The items of a list that may be left out.
    pub(super) fn may_list<T>(
        &mut self,
        object: &Object<'_>,
        key: &'static str,
        read: impl Fn(&Node<'_>) -> Result<T, Problem>,
    ) -> Option<Option<Vec<T>>> {
        match object.find(key) {
            Some(node) => self.items(&node, read).map(Some),
            None => Some(None),
        }
    }

    /// Items, none at all where one of them is a mistake.
    pub(super) fn items<T>(
        &mut self,
        node: &Node<'_>,
        read: impl Fn(&Node<'_>) -> Result<T, Problem>,
    ) -> Option<Vec<T>> {
        let items = self.keep(node.items())?;
        let read: Vec<Option<T>> = items.map(|item| self.keep(read(&item))).collect();
        read.into_iter().collect()
    }
}
