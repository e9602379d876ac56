using Pattress.Actions;
using Pattress.Jobs;
using Pattress.Working;

namespace Pattress.Apps.Tests.Cli;

/// <summary>
/// A plan made by hand, for the layout alone: its numbers mean nothing. Codes without a sentence show as their own words,
/// so that this golden text does not move with the text layer.
/// </summary>
internal static class HandMade
{
    public static PlanAnswer Plan { get; } = new(
        Verdict.NotHere, "A made-up house, for the layout of the page", "0.1.0", "0123456789abcdef", [Pole, Rail, Screen], [BayWall],
        [new("probe", "bay", new Point(820, 2180), ["pole"], R("drill_a_thin_hole_and_feel_for_the_stud_before_the_bracket_goes_up"), 3, 0.62, 0.95)],
        [
            new("made_up_screw_5x70", "fixing", 6, 2, 1, 50, 4.2m, 4.2m, ["pole"]),
            new("made_up_masonry_bit_10", "bit", 1, 1, 0, 1, 3m, 0m, ["rail"]),
        ],
        4.2m, "GBP",
        [new("masonry", 10, 55, ["rail"], 4, R("first_all_holes_with_the_masonry_bit."))],
        [R("isolate_the_circuit_and_use_a_detector_before_drilling;_a_zone_is_where_cables_are_allowed,_outside_it_is_not_safe")],
        [new Assumption("made_up_prices_are_invented", [], "assumed")]);

    private static ItemAnswer Pole => Item("pole", "Curtain pole over the bay", Verdict.CheckFirst, "one_hole_lies_where_a_cable_may_run",
        [Bracket(0, 421, "made_up_screw_5x70", 0.34), Bracket(1, 1221, "made_up_toggle_medium", 0.716)]);

    private static ItemAnswer Rail => Item("rail", "", Verdict.Ready, "it_holds", [Bracket(0, 300, "made_up_screw_5x70", 0.12)]);

    private static ItemAnswer Screen => Item("screen", "Screen\u001b[31m on an arm", Verdict.NotHere, "the_board_alone_cannot_carry_it", [Bracket(0, 1800, null, 0)])
        with { Remedies = [R("fix_a_pattress_board_over_two_studs"), R("move_it_180_mm_to_the_left")] };

    private static ItemAnswer Item(string id, string name, Verdict verdict, string why, IReadOnlyList<BracketAnswer> brackets) => new(
        id, "made_up_grab_rail", "bay", name, verdict, R(why), [], 7.25, ConsequenceClass.Hurts, brackets, 2.4e-5, 1e-4, [],
        [new Assumption("made_up_people_pull_with_a_force_of_300_N", [], "assumed")]);

    private static BracketAnswer Bracket(int index, double x, string? fixing, double used) => new(
        index, new Point(x, 2180), fixing, fixing is null ? 0 : 2, used, "made_up_withdrawal", 1e-5, "made_up_board_on_timber_studs", 0.93, index == 0, "made_up_rule",
        fixing is null ? null : "made_up_bar", 0.08m,
        fixing is null ? [] : [new(new Point(x, 2200), 3, 50, "made_up_wood", 0.97, ""), new(new Point(x, 2160), 3, 50, "made_up_wood", 0.97, "")],
        [new(new Point(x, 2200), 132.4, 41)], 0.4, 0.2, "made_up_curtain_drawn_to_one_side",
        [new("made_up_plug_8x40", 0.81, "made_up_pull_through", 2e-5, 0.31m, 0.93)],
        [new("made_up_plug_6x30", R("it_is_too_short_to_knot_behind_this_board"))],
        new("made_up_board_on_timber_studs", [], fixing, 70, 55),
        [new Step("F_Rd", "k_mod * F_Rk / gamma_M", "0.9 * 1240 / 1.3", 858.4615, "N", "EN 1995-1-1:2004 2.4.1", [])],
        R("no_kind_holds"), 3, new([], [], 3, 60, true));

    private static WallAnswer BayWall => new(
        "bay", "Bay", "wall", 3600, 2500, [new("made_up_board_on_timber_studs", 0.93), new("made_up_board_on_dabs", 0.05), new("made_up_brick", 0.01)],
        14.5, 0.5, 72, 4, [], [], [], [], null, []);

    private static Reason R(string code) => new(code.Replace('.', ' ').TrimEnd());
}
