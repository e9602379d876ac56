namespace Pattress.Browser.Tests;

/// <summary>Every view there is, with the demo house on the desk.</summary>
public static class Views
{
    public static readonly (string Name, string Path)[] All =
    [
        ("jobs", "/"), ("walls", "/walls"), ("wall", "/wall/bay"), ("ceiling", "/wall/landing"), ("wall-edit", "/wall/bay/edit"), ("wall-new", "/wall-new"),
        ("hang", "/hang"), ("hang-new", "/hang/new"), ("hang-one", "/hang/" + Demo.Load.Item), ("plan", "/plan"), ("plan-one", "/plan/" + Demo.Load.Item),
        ("buy", "/buy"), ("quote", "/quote"), ("stock", "/stock"), ("repair", "/repair/" + Demo.Load.Item + "/1"), ("papers", "/papers"), ("drill", "/drill"), ("prove", "/prove"), ("hand-over", "/hand-over"), ("share", "/share"), ("meet", "/meet"), ("help", "/help"), ("job", "/job"), ("quick", "/quick"),
        ("trials", "/trials"), ("trials-phone", "/trials/phone"), ("trials-compare", "/trials/compare"), ("trials-report", "/trials/report"), ("trials-certainty", "/trials/certainty"), ("nothing", "/no-such-page"),
    ];
}
