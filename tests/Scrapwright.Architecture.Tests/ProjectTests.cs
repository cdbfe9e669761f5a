namespace Scrapwright.Architecture.Tests;

public sealed class ProjectTests
{
    public static TheoryData<string> Names => [.. Projects.MayReferTo.Keys];

    public static TheoryData<string> WalledPackages => [.. Projects.Walls.Keys];

    [Fact]
    public void Every_project_under_src_is_listed()
    {
        var folders = Directory.EnumerateDirectories(Path.Combine(Repository.Root, "src"), "Scrapwright.*")
            .Where(folder => Directory.EnumerateFiles(folder, "*.csproj").Any())
            .Select(folder => Path.GetFileName(folder)["Scrapwright.".Length..]);

        Assert.Equal(Projects.MayReferTo.Keys.Order(), folders.Order());
        Assert.Equal(Projects.MayReferTo.Keys.Order(), Projects.Assemblies.Keys.Order());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Project_files_refer_only_downwards(string project)
    {
        var references = Projects.Includes(project, "ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path)["Scrapwright.".Length..]);

        Assert.Empty(references.Except(Projects.MayReferTo[project]));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Assemblies_use_only_what_is_below_them(string project)
    {
        var used = Projects.Assemblies[project].GetReferencedAssemblies()
            .Select(name => name.Name!)
            .Where(name => name.StartsWith("Scrapwright.", StringComparison.OrdinalIgnoreCase))
            .Select(name => name["Scrapwright.".Length..]);

        Assert.Empty(used.Except(Projects.MayReferTo[project]));
    }

    [Fact]
    public void Core_needs_no_package()
    {
        Assert.Empty(Projects.Includes("Core", "PackageReference"));
        Assert.Empty(Projects.Includes("Core", "FrameworkReference"));
        Assert.All(Projects.Assemblies["Core"].GetReferencedAssemblies(), name => Assert.StartsWith("System.", name.Name));
    }

    [Theory]
    [MemberData(nameof(WalledPackages))]
    public void Only_one_project_knows_the_package(string package)
    {
        var users = Projects.Assemblies
            .Where(entry => entry.Value.GetReferencedAssemblies().Any(name => IsPackage(name.Name!, package)))
            .Select(entry => entry.Key);
        var askers = Projects.MayReferTo.Keys.Where(project => Projects.Includes(project, "PackageReference").Any(name => IsPackage(name, package)));

        // The project that asks for the package shows that its name is not misspelt here.
        Assert.Equal([Projects.Walls[package]], askers);
        Assert.Empty(users.Except([Projects.Walls[package]]));
    }

    private static bool IsPackage(string name, string package) =>
        name.Equals(package, StringComparison.OrdinalIgnoreCase) || name.StartsWith(package + ".", StringComparison.OrdinalIgnoreCase);
}
