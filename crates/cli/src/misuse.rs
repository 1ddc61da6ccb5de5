//! A command line that cannot be understood, told in one line.

use clap::error::ErrorKind;
use clap::{Command, Error};

/// What a parser of numbers says, and what it would have taken.
const ACCEPTED: [(&str, &str); 3] = [
    ("invalid float literal", "accepted: a number"),
    ("invalid digit found in string", "accepted: a whole number"),
    ("cannot parse integer from empty string", "accepted: a whole number"),
];

/// The argument, what was found and what is accepted, as far as the parser knows them.
pub(crate) fn told(error: &Error, whole: &Command) -> String {
    let commands = || {
        let names: Vec<&str> = whole.get_subcommands().map(Command::get_name).collect();
        format!("accepted: {}", names.join(", "))
    };
    if error.kind() == ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand {
        return format!("no command is given; {}", commands());
    }
    let rendered = error.render().to_string();
    let lines = rendered.lines().map(str::trim);
    let said = lines.filter(|line| !line.is_empty() && !line.starts_with("tip:") && !line.starts_with("For more"));
    let mut text = String::new();
    for line in said {
        let line = line.strip_prefix("error: ").unwrap_or(line);
        match line.strip_prefix("Usage: ") {
            // The commands themselves say more.
            Some(_) if error.kind() == ErrorKind::InvalidSubcommand => text += &format!("; {}", commands()),
            Some(usage) => text += &format!("; accepted: {usage}"),
            None if text.is_empty() => text += line,
            None => text += &format!(" {line}"),
        }
    }
    for (says, accepted) in ACCEPTED {
        text = text.replace(says, accepted);
    }
    text.replace("[possible values: ", "[accepted: ").replace("is not in", "is not within the accepted")
}
