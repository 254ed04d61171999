### The guide as plain pages, for browsers in which nothing runs, for search engines and for paper.

# Above a list of all things with their answers.
pages-intro = Everything in this guide, with its answer. To find a thing, search this page: “Find in page” on a phone, Ctrl+F on a computer.
# A link.
pages-app = Open the guide that asks and answers
pages-places = Places to take things to
# In place of an answer.
pages-depends = it depends
# The browser's title. $category is a group of things, $program the guide's place.
pages-category-title = { $category } – { $program }
# Above other names of a thing and misspellings.
pages-also = Other words for it
# Above what holds today, where something else holds later.
pages-now = Now
# $day is a date.
pages-from = From { $day }
pages-too-much = The answer depends on too many things for this list.
# Above dates.
pages-next-open = Open next:
# Beside a weekday.
pages-all-day = day and night
# $items are names of things.
pages-takes-only = Takes only: { $items }
pages-does-not-take = Does not take: { $items }
